import { needed } from '../../calculation/needed.ts';
import { exactLength, type Length, length, ZERO } from '../../lengths/length.ts';
import { MOST_STRIPS, type Strips, stripsFor } from '../../sewing/cloth/strips.ts';
import { fullnessOf as fullOf, gathers } from '../../sewing/fullness/gathers.ts';
import type { Fullness, Gathers, GathersInput } from '../../sewing/fullness/gathers-input.ts';
import { mustBePositive, mustBeWithin, mustNotBeNegative } from '../../sewing/length-checks.ts';
import { answerUnless, mapped, type Outcome, refused } from '../../sewing/problem.ts';
import type { GATHER_FIELDS, GathersAsked } from './fields.ts';

export type Asked = Pick<GathersAsked, (typeof GATHER_FIELDS)[number]>;

/** Gathers as they were worked out, with what was asked. */
export interface Gathered {
  asked: GathersAsked;
  input: GathersInput;
  plan: Gathers;
  /** Undefined where the cloth isn't known. */
  strips: Strips | undefined;
  /** How deep each strip is cut; undefined where that isn't asked. */
  cutDeep: Length | undefined;
}

/** How deep each strip is cut: finished, with its seam at the top and its hem. */
export function cutDeepOf({
  deep,
  top,
  hem,
}: Pick<GathersAsked, 'deep' | 'top' | 'hem'>): Outcome<Length> {
  const finished = deep ?? ZERO;
  const problems = [
    ...mustBePositive('deep', finished),
    ...mustNotBeNegative('top', top),
    ...mustNotBeNegative('hem', hem),
  ];
  return answerUnless(problems, () => ({ ok: true, value: length(finished + top + hem) }));
}

/** What is left at both ends of the strip: of a ring, the seam that closes it. */
export function endsOf({ ring, seam, ends }: Pick<GathersAsked, 'ring' | 'seam' | 'ends'>): Length {
  return ring === 'closed' ? seam : (ends ?? seam);
}

/** What is asked, with its fullness as the cloth has it where that decides. */
export function gathersInput(asked: Asked): Outcome<GathersInput> {
  const { edge, flat = ZERO, ring, seam, parts } = asked;
  return answerUnless(mustNotBeNegative('seam', seam), () =>
    mapped(fullnessOf(asked), (full) => ({
      ...{ edge, flat, full, parts },
      ring: ring === 'closed',
      ends: endsOf(asked),
    })),
  );
}

function fullnessOf(asked: Asked): Outcome<Fullness> {
  const { by } = asked;
  if (by === 'cloth') return mapped(stripOfCloth(asked), (strip) => ({ by: 'strip', strip }));
  const full: Record<typeof by, () => Fullness> = {
    ratio: () => ({ by: 'ratio', ...needed({ ratio: asked.ratio }) }),
    part: () => ({ by: 'part', ...needed({ part: asked.part }) }),
    sample: () => ({
      by: 'sample',
      ...needed({ flat: asked.sampleFlat, gathered: asked.sampleGathered }),
    }),
    strip: () => ({ by: 'strip', ...needed({ strip: asked.strip }) }),
  };
  return { ok: true, value: full[by]() };
}

/** All strips that the cloth gives, joined. Problems: too little for one, or for the edge as it is. */
function stripOfCloth(asked: Asked): Outcome<Length> {
  const cutDeep = cutDeepOf(asked);
  if (!cutDeep.ok) return cutDeep;
  const { have, cloth } = needed({ have: asked.have, cloth: asked.cloth });
  const { edge, seam } = asked;
  const least = stripsFor({ needed: edge, cloth, seam, ends: endsOf(asked) });
  if (!least.ok) return refused(inField(least.problems[0], 'needed', 'edge'));
  const fewest = length(least.value.count * cutDeep.value);
  const most = exactLength((MOST_STRIPS + 1) * cutDeep.value - 1);
  return answerUnless(mustBeWithin('have', have, fewest, most), () => {
    const count = countOfCloth(have, cutDeep.value);
    return { ok: true, value: length(count * (cloth - 2 * seam) + 2 * seam) };
  });
}

/** Strips so deep, whole, of so much cloth. */
export function countOfCloth(have: Length, deep: Length): number {
  return Math.floor(have / deep);
}

function inField<P extends { field: string }>(problem: P, from: string, to: string): P {
  return problem.field === from ? { ...problem, field: to } : problem;
}

/** All that is asked of gathers, or every reason why not. */
export function gathered(asked: GathersAsked): Outcome<Gathered> {
  const input = gathersInput(asked);
  if (!input.ok) return input;
  const found = gathers(input.value);
  if (!found.ok) return found;
  const plan = found.value;
  const strips = stripsOf(asked, plan.strip);
  if (strips && !strips.ok) return strips;
  const cutDeep = asked.deep === undefined ? undefined : cutDeepOf(asked);
  if (cutDeep && !cutDeep.ok) return cutDeep;
  return answerUnless(mustNotBeNegative('top', asked.top), () => ({
    ok: true,
    value: {
      ...{ asked, input: input.value, plan },
      strips: strips?.ok ? strips.value : undefined,
      cutDeep: cutDeep?.ok ? cutDeep.value : undefined,
    },
  }));
}

/** The strips that the cloth takes; undefined where its width isn't given. */
export function stripsOf(asked: Asked, strip: Length): Outcome<Strips> | undefined {
  const { cloth, seam, deep, ring } = asked;
  if (cloth === undefined) return undefined;
  const cutDeep = deep === undefined ? undefined : cutDeepOf(asked);
  if (cutDeep && !cutDeep.ok) return cutDeep;
  return stripsFor({
    ...{ needed: strip, cloth, seam, ends: endsOf(asked) },
    ring: ring === 'closed',
    deep: cutDeep?.value,
  });
}

/** So many strips, and how full they come out. */
export interface Fewer {
  count: number;
  ratio: number;
}

/** The most fullness that one strip fewer may cost to be offered: common practice, no source. */
const LITTLE_LOSS = 0.05;

/** One strip fewer, where that costs little, a fullness of two decimals that it surely gives. */
export function fewerStrips({ asked, input, plan, strips }: Gathered): Fewer | undefined {
  const { cloth } = asked;
  if (!strips || strips.count < 2 || cloth === undefined || asked.by === 'cloth') return undefined;
  const ratio = Math.floor(100 * ratioOfStrips(asked, input, strips.count - 1)) / 100;
  if (ratio < 1 || ratio < plan.ratio * (1 - LITTLE_LOSS)) return undefined;
  const again = gathers({ ...input, full: { by: 'ratio', ratio } });
  const so = again.ok ? stripsOf(asked, again.value.strip) : undefined;
  return so?.ok && so.value.count === strips.count - 1
    ? { count: so.value.count, ratio }
    : undefined;
}

/** What the published rule takes, which leaves joins out, where that is fewer; and how full that comes out. */
export function ruleLess({ asked, input, plan, strips }: Gathered): Fewer | undefined {
  const { cloth } = asked;
  if (!strips || cloth === undefined || asked.by === 'cloth') return undefined;
  const count = Math.ceil(plan.strip / cloth);
  if (count >= strips.count) return undefined;
  return { count, ratio: ratioOfStrips(asked, input, count) };
}

function ratioOfStrips(asked: Asked, input: GathersInput, count: number): number {
  const { cloth } = needed({ cloth: asked.cloth });
  const cut = exactLength(count * (cloth - 2 * asked.seam) + 2 * asked.seam);
  return fullOf(input, cut);
}
