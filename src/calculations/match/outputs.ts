import { cautionWords } from '#words/common/caution-words.ts';
import { matchOutputWords as words } from '#words/outputs/match-output-words.ts';
import type { Condition } from '../../calculation/field-spec.ts';
import { type Outputs, outputOf, type Step, sumTaken } from '../../calculation/output.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { match, partOf, placesOf } from '../../sewing/matching.ts';
import { MOST_SEGMENTS, totalOf } from '../../sewing/matching-input.ts';
import { mapped } from '../../sewing/problem.ts';
import { matchFields } from './fields.ts';
import { EDGE_FIELDS, matchInput } from './read.ts';

const output = outputOf(matchFields);
const { here, other } = matchFields.specs;

const mark: Step = {
  do: words.mark,
  datum: 'zero',
  stage: 'join',
  undoable: true,
  caution: cautionWords.pins,
};

/** Whether an edge is given in so many lengths at least. */
const has =
  (edge: typeof here, lengths: number): Condition =>
  (ask) =>
    ask(edge)
      .split(';')
      .filter((one) => one.trim() !== '').length >= lengths;
const numbered = Array.from({ length: MOST_SEGMENTS }, (_, i) => i + 1);

/** Where each notch came to lie as it was sewn: its ease and the next one's follow from that. */
const sewn = numbered.map((i) =>
  output({
    key: `sewn-${i}`,
    name: words.sewn(i),
    kind: 'length',
    reads: EDGE_FIELDS,
    when: { field: 'here', is: has(here, i) },
    step: { do: words.sew(i), datum: 'zero', stage: 'join', undoable: true },
    of: (fields) =>
      mapped(match(matchInput(fields)), () => placesOf(fields.here)[i - 1] as ExactLength),
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
    when: { field: 'here', is: has(here, i) },
    of: (fields, { made }) =>
      mapped(match(matchInput(fields)), ({ lengths }) => {
        const places = placesOf(fields.here);
        const from = made[before] ?? places[i - 2] ?? 0;
        const to = made[after] ?? places[i - 1] ?? from;
        return exactLength((lengths[i - 1]?.other ?? 0) - (to - from));
      }),
  });
});

const moves = numbered.slice(0, -1).map((i) =>
  output({
    key: `move-${i}`,
    name: words.move(i),
    kind: 'length',
    reads: EDGE_FIELDS,
    when: [
      { field: 'here', is: has(here, i + 1) },
      { field: 'other', is: has(other, 2) },
    ],
    of: (fields) =>
      mapped(match(matchInput(fields)), ({ moves: all }) => exactLength(all?.[i - 1] ?? 0)),
  }),
);

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
      decides: ['here', 'other', 'parts', 'weights'],
      step: mark,
      of: (fields) => mapped(match(matchInput(fields)), ({ runs }) => runs.here),
    }),
    output({
      key: 'marks-other',
      name: words.otherMarks,
      kind: 'run',
      reads: EDGE_FIELDS,
      decides: ['here', 'other', 'parts', 'weights', 'spread', 'shares', 'use'],
      step: mark,
      of: (fields) => mapped(match(matchInput(fields)), ({ runs }) => runs.other),
    }),
    ...sewn,
    ...eases,
    output({
      key: 'ease',
      name: words.ease,
      kind: 'length',
      reads: [],
      takes: eases,
      of: (_, { takes }) => ({ ok: true, value: exactLength(sumTaken(takes)) }),
    }),
    output({
      key: 'percent',
      name: words.percent,
      kind: 'number',
      reads: ['here'],
      takes: eases,
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
      of: (fields) =>
        mapped(
          match(matchInput(fields)),
          ({ lengths }) => 100 * Math.max(...lengths.map(({ fullest }) => fullest)),
        ),
    }),
    ...moves,
  ],
};
