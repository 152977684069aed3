import { type ExactLength, exactLength, inches, length, mm } from '../../lengths/length.ts';
import { biasFor } from '../../sewing/cloth/bias.ts';
import type { Need } from './need.ts';

/** How bias strips are reckoned on cloth, as the calculation of them begins: common practice, no source. */
export const BIAS_JOIN = mm(6);
export const BIAS_SHORTEST = mm(100);

/** Bias strip that needs take: so wide, and so long together. In 1/8000 mm. */
interface BiasNeed {
  need: Need;
  wide: number;
  long: number;
}

/** Two strips this close are one: what a fold of cloth differs by, 1/16 in. */
const ALIKE = inches(1 / 16);

/**
 * How much of the cloth's length bias strips take, cut from its whole width at 45° and joined: strips that
 * are as wide together, each width by itself. Never too little: `biasFor` counts whole strips and joins.
 *
 * @param width usable and washed, in 1/8000 mm
 * @returns in 1/8000 mm, and the needs no strip of which can be cut from such cloth
 */
export function biasCloth(
  all: readonly BiasNeed[],
  width: number,
): { long: number; cannot: readonly Need[] } {
  const groups: BiasNeed[][] = [];
  for (const one of [...all].sort((a, b) => b.wide - a.wide)) {
    const last = groups.at(-1);
    // The widest of them is what all are cut as.
    if (last?.[0] && last[0].wide - one.wide <= ALIKE) last.push(one);
    else groups.push([one]);
  }
  const cloths = groups.map((group) => ({ group, long: forOne(group, width) }));
  return {
    long: cloths.reduce((sum, { long }) => sum + (long ?? 0), 0),
    cannot: cloths.flatMap(({ group, long }) =>
      long === undefined ? group.map(({ need }) => need) : [],
    ),
  };
}

function forOne(group: readonly BiasNeed[], width: number): ExactLength | undefined {
  const up = (of: number) => length(Math.ceil(of - 1e-6));
  const long = group.reduce((sum, one) => sum + one.long, 0);
  const found = biasFor(
    {
      ...{ width: up(group[0]?.wide ?? 0), cloth: length(Math.floor(width)) },
      ...{ shortest: BIAS_SHORTEST, seam: BIAS_JOIN },
    },
    up(long),
  );
  return found.ok ? exactLength(found.value) : undefined;
}
