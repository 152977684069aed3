import { lacingWords as words } from '#words/calculations/lacing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { asTyped } from '../../calculation/draft-text.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { ExactLength } from '../../lengths/length.ts';
import type { Laced } from '../../sewing/lacing/lacing.ts';
import type { LacingInput } from '../../sewing/lacing/lacing-input.ts';
import { PUBLISHED } from '../../sewing/lacing/lacing-kinds.ts';
import { COMFORTABLE, EVEN_HOLES } from '../../sewing/sources/lacing.ts';
import { timesText } from './lines.ts';

/**
 * How the lace of one row was got: by geometry, and by the least published.
 *
 * @param sources whether to say what the sources say, too
 */
export function workingsOf(
  input: LacingInput,
  { parts, extra, geometry, published, edge }: Laced,
  sources: boolean,
  bench: Bench,
): Working[] {
  const { kind, thickness, tail } = input;
  const sum = (x: ExactLength) => exactly(x, bench);
  const times = (count: number, x: ExactLength) => `${count} × ${asTyped(x, bench)}`;
  const tails = tail > 0 ? [times(2, tail)] : [];
  const turned = parts.turns > 0 ? [times(parts.turns, extra)] : [];
  const shape = [sum(parts.straight), times(parts.passes, thickness), ...turned, ...tails];
  const figure = PUBLISHED[kind];
  const [least] = figure?.value ?? [];
  const factor = least === undefined ? '' : timesText(least, bench);
  const whole = [`${factor} × ${asTyped(edge, bench)}`, asTyped(thickness, bench), ...tails];
  return [
    {
      formula: words.sum(shape, sum(geometry), words.parts(parts.turns > 0, tail > 0)),
      source: words.derived,
    },
    ...(figure && published
      ? [
          {
            formula: words.sum(whole, sum(published[0]), words.bySource(figure, tail > 0)),
            source: words.source(figure),
          },
        ]
      : []),
    ...(sources
      ? [COMFORTABLE, ...(kind === 'running' ? [EVEN_HOLES] : [])].flatMap((one) =>
          one ? [{ formula: words.rule(one), source: words.source(one) }] : [],
        )
      : []),
  ];
}
