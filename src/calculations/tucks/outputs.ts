import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { tucksOutputWords as words } from '#words/outputs/tucks-output-words.ts';
import { type Comes, type Outputs, outputOf } from '../../calculation/output.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { TUCK_LINES, type Tucks, tucks } from '../../sewing/fullness/tucks.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { by, TUCK_FIELDS, type TucksAsked, tuckFields, tucksInput } from './fields.ts';

const output = outputOf(tuckFields);

type Fields = Pick<TucksAsked, (typeof TUCK_FIELDS)[number]>;

/** As asked, or as many as were begun; groups keep theirs. */
function planOf(fields: Fields, marks?: number): Outcome<Tucks> {
  const input = tucksInput(fields);
  const begun = marks === undefined ? undefined : Math.round(marks / TUCK_LINES);
  const spread =
    begun === undefined || input.spread.by === 'groups'
      ? input.spread
      : ({ by: 'count', count: begun } as const);
  return tucks({ ...input, spread });
}

/** A length that one tuck alone, or tucks without groups, don't have. */
function maybe(
  found: Outcome<Tucks>,
  see: (plan: Tucks) => ExactLength | undefined,
): Comes<ExactLength> {
  if (!found.ok) return found;
  const value = see(found.value);
  return value === undefined ? { ok: false, absent: 'by' } : { ok: true, value };
}

const asked = { reads: TUCK_FIELDS } as const;

const cut = output({
  ...asked,
  key: 'cut',
  name: words.cut,
  kind: 'length',
  step: {
    do: words.cutIt,
    datum: 'cut-end',
    stage: 'cut',
    undoable: false,
    bound: 'least',
    caution: cautionWords.shears,
  },
  of: (fields) => mapped(planOf(fields), (plan) => plan.cut),
});

const marks = output({
  ...asked,
  key: 'marks',
  name: words.marks,
  kind: 'run',
  decides: ['by', 'gap', 'spacing', 'count', 'groups', 'each', 'fit'],
  step: { do: words.mark, datum: 'cut-end', stage: 'cut', undoable: true },
  of: (fields, { count }) => mapped(planOf(fields, count), ({ run }) => run),
});

/** What tucks give: the cloth, their lines, and what comes of them. */
export const tucksOutputs: Outputs = {
  id: 'tucks',
  rule: 1,
  fields: tuckFields,
  outputs: [
    cut,
    marks,
    output({
      ...asked,
      key: 'depth',
      name: words.depth,
      kind: 'length',
      step: {
        do: words.stitch,
        datum: 'fold',
        stage: 'cut',
        undoable: true,
        caution: cautionWords.pins,
      },
      of: (fields) => mapped(planOf(fields), () => fields.depth),
    }),
    output({
      ...asked,
      key: 'finished',
      name: words.finished,
      kind: 'length',
      bentBy: [cut],
      step: {
        do: words.press,
        datum: 'zero',
        stage: 'cut',
        undoable: true,
        caution: turned.iron(IRON_ONE_DOT.value),
      },
      of: (fields, { made }) =>
        mapped(planOf(fields), (plan) => {
          const there = made[cut.key];
          return exactLength(fields.finished + (there === undefined ? 0 : there - plan.cut));
        }),
    }),
    output({
      ...asked,
      key: 'count',
      name: words.count,
      kind: 'count',
      adds: true,
      of: (fields) => mapped(planOf(fields), ({ count }) => count),
    }),
    output({
      ...asked,
      key: 'spacing',
      name: words.spacing,
      kind: 'length',
      of: (fields) => maybe(planOf(fields), ({ spacing }) => spacing),
    }),
    output({
      ...asked,
      key: 'gap',
      name: words.gap,
      kind: 'length',
      of: (fields) => maybe(planOf(fields), ({ gap }) => gap),
    }),
    output({
      ...asked,
      key: 'between',
      name: words.between,
      kind: 'length',
      when: { field: 'by', is: by.is('groups') },
      of: (fields) => maybe(planOf(fields), ({ between }) => between),
    }),
    output({
      ...asked,
      key: 'taken',
      name: words.taken,
      kind: 'length',
      of: (fields) => mapped(planOf(fields), ({ taken }) => taken),
    }),
    output({
      ...asked,
      key: 'gain',
      name: words.gain,
      kind: 'length',
      of: (fields) => mapped(planOf(fields), () => exactLength(2 * fields.depth)),
    }),
  ],
};
