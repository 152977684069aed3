import { cautionWords } from '#words/common/caution-words.ts';
import { matchOutputWords as words } from '#words/outputs/match-output-words.ts';
import type { Ask } from '../../calculation/field-spec.ts';
import { type Outputs, outputOf, type Step, sumTaken } from '../../calculation/output.ts';
import { type ExactLength, exactLength, length } from '../../lengths/length.ts';
import { type Match, match, partOf, placesOf } from '../../sewing/pieces/matching.ts';
import { MOST_SEGMENTS, totalOf } from '../../sewing/pieces/matching-input.ts';
import { mapped } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { matchFields } from './fields.ts';
import { notchesAlone } from './notches.ts';
import { fewer, has, isUneven, meets, saysAlone, UNPAIRED } from './pairs.ts';
import { EDGE_FIELDS, matchInput } from './read.ts';

const output = outputOf(matchFields);
const { here } = matchFields.specs;

const mark: Omit<Step, 'do'> = {
  datum: 'both-begin',
  stage: 'join',
  undoable: true,
  caution: cautionWords.pins,
};

/** Lengths pair: where they don't, the edge with fewer of them takes what needs it away. */
const pairs = (['here', 'other'] as const).map((edge) => ({
  field: edge,
  is: (ask: Ask) => fewer(ask) !== edge,
}));
/** So many lengths between notches that meet. */
const paired = (lengths: number) => [
  ...pairs,
  { field: 'here' as const, is: has(here, lengths) },
  { field: 'other' as const, is: meets(lengths) },
];
const numbered = Array.from({ length: MOST_SEGMENTS }, (_, i) => i + 1);

/** Where each length between notches that meet ends, on the edge that keeps its length. */
const heresOf = ({ lengths }: Match) => placesOf(lengths.map((one) => one.here));

/** Where each notch came to lie as it was sewn: its ease and the next one's follow from that. */
const sewn = numbered.map((i) =>
  output({
    key: `sewn-${i}`,
    name: words.sewn(i),
    kind: 'length',
    reads: EDGE_FIELDS,
    when: paired(i),
    step: { do: words.sew(i), datum: 'zero', stage: 'join', undoable: true },
    of: (fields) =>
      mapped(match(matchInput(fields)), (plan) => heresOf(plan)[i - 1] as ExactLength),
  }),
);

const eases = numbered.map((i) => {
  const [before, after] = [`sewn-${i - 1}`, `sewn-${i}`];
  return output({
    key: `ease-${i}`,
    name: words.easeOf(i),
    kind: 'length',
    reads: EDGE_FIELDS,
    bentBy: sewn.filter(({ key }) => key === before || key === after),
    when: paired(i),
    of: (fields, { made }) =>
      mapped(match(matchInput(fields)), (plan) => {
        const places = heresOf(plan);
        const from = made[before] ?? places[i - 2] ?? 0;
        const to = made[after] ?? places[i - 1] ?? from;
        return exactLength((plan.lengths[i - 1]?.other ?? 0) - (to - from));
      }),
  });
});

const moves = numbered.slice(0, -1).map((i) =>
  output({
    key: `move-${i}`,
    name: words.move(i),
    kind: 'length',
    reads: EDGE_FIELDS,
    when: [...paired(i + 1), { field: 'other', is: has(matchFields.specs.other, 2) }],
    of: (fields) =>
      mapped(match(matchInput(fields)), ({ moves: all }) => exactLength(all?.[i - 1] ?? 0)),
  }),
);

/** Which notches meet none, and where on their edge: the seam goes past them. */
const left = output({
  key: 'left',
  name: words.left,
  kind: 'run',
  reads: EDGE_FIELDS,
  decides: ['here', 'other', 'alone'],
  when: [
    { field: 'other', is: isUneven },
    { field: 'alone', is: saysAlone },
  ],
  step: { do: words.sewPast, datum: 'zero', stage: 'join', undoable: true },
  of: (fields) =>
    mapped(match(matchInput(fields)), (plan): Run => {
      const edge = plan.pairs?.left.here.length ? 'here' : 'other';
      const alone = notchesAlone({ asked: fields, plan }, edge);
      return {
        datum: 'zero',
        length: length(Math.round(totalOf(fields[edge]))),
        marks: alone.map(({ notch, at }) => ({ at, label: String(notch), kind: 'notch' })),
      };
    }),
});

/** All of it, where lengths don't pair. */
const unpaired = output({
  key: UNPAIRED,
  name: words.unpaired,
  kind: 'length',
  reads: EDGE_FIELDS,
  when: { field: 'other', is: (ask) => fewer(ask) !== undefined },
  of: (fields) => mapped(match(matchInput(fields)), ({ ease }) => ease),
});
const allEases = [...eases, unpaired];

/** What two matched edges give: marks on both, the ease of each length as it is sewn, and where notches should lie. */
export const matchOutputs: Outputs = {
  id: 'match',
  rule: 1,
  fields: matchFields,
  outputs: [
    output({
      key: 'marks',
      name: words.marks,
      kind: 'run',
      reads: EDGE_FIELDS,
      decides: ['here', 'other', 'alone', 'parts', 'weights'],
      when: pairs,
      step: { ...mark, do: words.mark },
      of: (fields) => mapped(match(matchInput(fields)), ({ runs }) => runs.here),
    }),
    output({
      key: 'marks-other',
      name: words.otherMarks,
      kind: 'run',
      reads: EDGE_FIELDS,
      decides: ['here', 'other', 'alone', 'parts', 'weights', 'spread', 'shares', 'use'],
      when: pairs,
      step: { ...mark, do: words.markOther },
      of: (fields) => mapped(match(matchInput(fields)), ({ runs }) => runs.other),
    }),
    left,
    ...sewn,
    ...allEases,
    output({
      key: 'ease',
      name: words.ease,
      kind: 'length',
      reads: [],
      takes: allEases,
      of: (_, { takes }) => ({ ok: true, value: exactLength(sumTaken(takes)) }),
    }),
    output({
      key: 'percent',
      name: words.percent,
      kind: 'number',
      reads: ['here'],
      takes: allEases,
      of: (fields, { takes }) => ({
        ok: true,
        value: 100 * partOf(exactLength(sumTaken(takes)), totalOf(fields.here)),
      }),
    }),
    output({
      key: 'fullest',
      name: words.fullest,
      kind: 'number',
      reads: EDGE_FIELDS,
      when: pairs,
      of: (fields) =>
        mapped(
          match(matchInput(fields)),
          ({ lengths }) => 100 * Math.max(...lengths.map(({ fullest }) => fullest)),
        ),
    }),
    ...moves,
  ],
};
