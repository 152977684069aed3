import { lacingOutputWords as words } from '#words/outputs/lacing-output-words.ts';
import { type Condition, given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import {
  type Comes,
  type Kind,
  type Output,
  type Outputs,
  outputOf,
  type Step,
  sumTaken,
  type Values,
} from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { type Laced, lace } from '../../sewing/lacing/lacing.ts';
import { type Outcome, type Problem, refused } from '../../sewing/problem.ts';
import { type LacingAsked, lacingFields } from './fields.ts';
import {
  NO_STEPS,
  ofSecond,
  ROW_FIELDS,
  type RowAsked,
  rowOf,
  secondOf,
  stepFaults,
  stepsOf,
} from './row.ts';

const output = outputOf(lacingFields);
const { start, holes2 } = lacingFields.specs;

/** What a second row has of its own. */
type Second = Pick<LacingAsked, 'holes2' | 'pitch2'>;

const two = { field: 'holes2', is: given(holes2) } as const;
/** Two needles, or there and back, have no middle to start in. */
const hasStart: Condition = (ask) => start.when?.(ask) ?? true;
const fromMiddle = [
  { field: 'kind', is: hasStart },
  { field: 'start', is: start.is('middle') },
] as const;

/** The lace of the first row; or, with holes of its own, of the second. */
function lacedOf(asked: RowAsked, second?: Second): Comes<Laced> {
  const steps = asked.kind === 'own' ? stepsOf(asked.own, asked.margin) : NO_STEPS;
  if (!steps.ok) return { ok: false, faults: stepFaults(steps) };
  const row = rowOf(asked, steps.repeat);
  if (!second) return lace(row);
  const { holes2: holes } = needed({ holes2: second.holes2 });
  const pitch = second.pitch2;
  return ofSecondRow(lace(secondOf(row, { holes, pitch })), pitch !== undefined);
}

function ofSecondRow(outcome: Outcome<Laced>, ownPitch: boolean): Outcome<Laced> {
  if (outcome.ok) return outcome;
  const named = (one: Problem) => ofSecond(one, ownPitch);
  const [first, ...more] = outcome.problems;
  return refused(named(first), ...more.map(named));
}

/** A number of the lace of either row. */
interface Part<K extends Kind> {
  key: string;
  names: readonly [string, string];
  kind: K;
  adds?: true;
  bound?: NonNullable<Output['bound']>;
  /** Of each row, what is done; and the rest of the step. */
  cuts?: readonly [string, string];
  step?: Omit<Step, 'do'>;
  when?: typeof fromMiddle;
  see(laced: Laced): Values[K];
}

/** Of the first row, and of the second where there is one. */
function ofRows<K extends Kind>({
  key,
  names,
  when = [] as never,
  cuts,
  step,
  see,
  ...part
}: Part<K>): [Output, Output] {
  const seen = (came: Comes<Laced>): Comes<Values[K]> =>
    came.ok ? { ok: true, value: see(came.value) } : came;
  const stepOf = (row: 0 | 1) => step && cuts && { step: { ...step, do: cuts[row] } };
  return [
    output({
      ...part,
      ...stepOf(0),
      key,
      name: names[0],
      reads: ROW_FIELDS,
      when,
      of: (fields) => seen(lacedOf(fields)),
    }),
    output({
      ...part,
      ...stepOf(1),
      key: `${key}-2`,
      name: names[1],
      reads: [...ROW_FIELDS, 'holes2', 'pitch2'],
      when: [two, ...when],
      of: (fields) => seen(lacedOf(fields, fields)),
    }),
  ];
}

const laces = ofRows({
  key: 'lace',
  names: words.lace,
  kind: 'length',
  adds: true,
  cuts: words.cut,
  step: {
    ...{ datum: 'zero', stage: 'edge', undoable: false, bound: 'least' },
    caution: words.blade,
  },
  see: ({ total }) => total,
});

const half = (i: 0 | 1) => (laced: Laced) => needed({ middle: laced.middle }).middle.halves[i];

/** What the lacing of a row, or of two, gives: the lace to cut, in pieces, and its halves from the middle. */
export const lacingOutputs: Outputs = {
  id: 'lacing',
  rule: 1,
  fields: lacingFields,
  outputs: [
    ...ofRows({ key: 'holes', names: words.holes, kind: 'run', see: ({ run }) => run }),
    ...laces,
    output({
      key: 'lace-all',
      name: words.all,
      kind: 'length',
      bound: 'least',
      reads: [],
      takes: laces,
      adds: true,
      material: { kind: 'lace' },
      of: (_, { takes }) => ({ ok: true, value: exactLength(sumTaken(takes)) }),
    }),
    ...ofRows({
      key: 'pieces',
      names: words.pieces,
      kind: 'count',
      adds: true,
      see: ({ pieces }) => pieces,
    }),
    ...ofRows({
      key: 'piece',
      names: words.piece,
      kind: 'length',
      bound: 'least',
      see: ({ each }) => each,
    }),
    ...ofRows({
      key: 'to-first',
      names: words.toFirst,
      kind: 'length',
      when: fromMiddle,
      see: half(0),
    }),
    ...ofRows({
      key: 'to-last',
      names: words.toLast,
      kind: 'length',
      when: fromMiddle,
      see: half(1),
    }),
  ],
};
