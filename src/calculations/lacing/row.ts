import type { Fault } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { type Length, mm, ZERO } from '../../lengths/length.ts';
import type { LacingInput } from '../../sewing/lacing/lacing-input.ts';
import type { Repeat } from '../../sewing/lacing/lacing-repeat.ts';
import { readSteps, type StepsRead } from '../../sewing/lacing/lacing-steps.ts';
import type { Problem } from '../../sewing/problem.ts';
import type { LacingAsked } from './fields.ts';

/** What the lace of one row depends on: the other fields are of a second row, and of the drawing. */
export const ROW_FIELDS = [
  'kind',
  'own',
  'holes',
  'pitch',
  'margin',
  'thickness',
  'outside',
  'lace',
  'start',
  'tail',
  'longest',
] as const satisfies readonly (keyof LacingAsked)[];

export type RowAsked = Pick<LacingAsked, (typeof ROW_FIELDS)[number]>;

/** A lacing of no steps of one's own. */
export const NO_STEPS = { ok: true, repeat: undefined, before: false, offHoles: [] } as const;
export type OwnSteps = Extract<StepsRead, { ok: true }> | typeof NO_STEPS;
const OWN = 'own' satisfies keyof LacingAsked;

/** A row, with the maker's own steps where there are some. */
export function rowOf({ outside, ...asked }: RowAsked, own: Repeat | undefined): LacingInput {
  const out = asked.kind === 'outside' ? needed({ outside }) : { outside: ZERO };
  return { ...asked, ...out, own };
}

/** The same lacing over a second row, which has holes of its own and may have a pitch of its own. */
export function secondOf(
  first: LacingInput,
  { holes, pitch = first.pitch }: { holes: number; pitch: Length | undefined },
): LacingInput {
  return { ...first, holes, pitch };
}

/** What is wrong with the second row’s own holes is a fault of the fields that are its own. */
export function ofSecond(problem: Problem, ownPitch: boolean): Problem {
  const own: Readonly<Record<string, keyof LacingAsked>> = {
    holes: 'holes2',
    ...(ownPitch && { pitch: 'pitch2' as const }),
  };
  return { ...problem, field: own[problem.field] ?? problem.field };
}

/** Whatever is wrong with the margin, the steps are read. */
export function stepsOf(typed: string, margin: Length): StepsRead {
  return readSteps(typed, margin > 0 ? margin : mm(1));
}

/** What could not be read of the steps. */
export function stepFaults(steps: StepsRead | typeof NO_STEPS): Fault[] {
  return steps.ok ? [] : steps.faults.map((fault) => ({ field: OWN, why: { of: 'steps', fault } }));
}
