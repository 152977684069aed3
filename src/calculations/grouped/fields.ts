import { groupedWords as words } from '#words/calculations/grouped-words.ts';
import { choice, count, length, lengthOrNone, maybeLength } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import { ZERO } from '../../lengths/length.ts';
import type { BandEndInput, FoldInput } from '../../sewing/bands/band-end.ts';
import type { GroupsInput } from '../../sewing/closures/grouped.ts';
import type { LoopsInput } from '../../sewing/closures/loops.ts';

export const kind = choice(words.kind);
const ofGroups = { when: kind.is('groups') } as const;
const ofLap = { when: kind.is('lap') } as const;
const ofLoops = { when: kind.is('loops') } as const;
const ofHanger = { when: kind.is('hanger') } as const;

/** What is asked of closings that are no single row: what always matters first. */
export const groupedFields = schema(words.labels, {
  kind,
  opening: length({ start: { cm: '46', mm: '460', in: '18' }, ...ofGroups, usual: 'opening' }),
  groups: count({ start: '3', ...ofGroups, usual: 'closures' }),
  each: count({ start: '2', ...ofGroups, usual: 'closures' }),
  within: length({ start: { cm: '3', mm: '30', in: '1 1/4' }, ...ofGroups, usual: 'closurePitch' }),
  top: lengthOrNone(words.none, {
    start: { cm: '1.5', mm: '15', in: '5/8' },
    ...ofGroups,
    usual: 'endMargin',
    givesWay: true,
  }),
  bottom: lengthOrNone(words.none, {
    start: { cm: '5', mm: '50', in: '2' },
    ...ofGroups,
    usual: 'endMargin',
    givesWay: true,
  }),
  lap: length({ start: { cm: '4', mm: '40', in: '1 1/2' }, ...ofLap, usual: 'lap' }),
  from: length({
    start: { cm: '1.5', mm: '15', in: '5/8' },
    when: kind.is('lap', 'fold'),
    usual: 'endMargin',
    label: (ask) => (ask(kind) === 'fold' ? words.fromFold : undefined),
  }),
  hole: maybeLength(words.noHole, { ...ofLap, usual: 'button' }),
  around: length({ start: { cm: '80', mm: '800', in: '31 1/2' }, ...ofLoops, usual: 'around' }),
  loops: count({ start: '5', ...ofLoops, usual: 'closures' }),
  belt: length({ start: { cm: '3.5', mm: '35', in: '1 3/8' }, ...ofLoops, usual: 'stripWidth' }),
  ease: lengthOrNone(words.none, { start: { cm: '0.3', mm: '3', in: '1/8' }, ...ofLoops }),
  turn: length({ start: { cm: '1', mm: '10', in: '3/8' }, ...ofLoops, usual: 'turn' }),
  drop: length({ start: { cm: '5', mm: '50', in: '2' }, ...ofHanger, usual: 'stripWidth' }),
  seam: length({ start: { cm: '1', mm: '10', in: '3/8' }, ...ofHanger, usual: 'seamAllowance' }),
  thing: lengthOrNone(words.none, {
    start: { cm: '0.5', mm: '5', in: '1/4' },
    when: kind.is('fold'),
    usual: 'layers',
  }),
  thick: lengthOrNone(words.none, {
    start: { cm: '0.2', mm: '2', in: '1/16' },
    when: kind.is('loops', 'fold'),
    usual: 'clothThick',
    label: (ask) => (ask(kind) === 'loops' ? words.beltThick : undefined),
  }),
});

/** What was read of the fields. */
export type GroupedAsked = InputOf<(typeof groupedFields)['specs']>;

export const GROUP_FIELDS = ['opening', 'groups', 'each', 'within', 'top', 'bottom'] as const;
export const LAP_FIELDS = ['lap', 'from', 'hole'] as const;
export const LOOP_FIELDS = ['around', 'loops', 'belt', 'ease', 'turn', 'thick'] as const;
export const FOLD_FIELDS = ['from', 'thing', 'thick'] as const;

type Of<Keys extends readonly (keyof GroupedAsked)[]> = Pick<GroupedAsked, Keys[number]>;

/** The groups that are asked for. */
export function groupsInput(asked: Of<typeof GROUP_FIELDS>): GroupsInput {
  const { opening, groups, each, within, top = ZERO, bottom = ZERO } = asked;
  return { ...needed({ opening, groups, each, within }), top, bottom };
}

/** The band's end that is asked for. */
export function lapInput({ lap, from, hole }: Of<typeof LAP_FIELDS>): BandEndInput {
  return { ...needed({ lap, from }), hole };
}

/** The loops that are asked for. @param begun how many are marked already, in the place of what is asked */
export function loopsInput(asked: Of<typeof LOOP_FIELDS>, begun?: number): LoopsInput {
  const { around, loops, belt, turn, ease = ZERO, thick = ZERO } = asked;
  const all = needed({ around, loops, belt, turn });
  return { ...all, loops: begun ?? all.loops, ease, thick };
}

/** The fold that is asked for. */
export function foldInput({ from, thing = ZERO, thick = ZERO }: Of<typeof FOLD_FIELDS>): FoldInput {
  return { ...needed({ from }), thing, thick };
}
