import { holeWords } from '#words/common/hole-words.ts';
import { outlineOutputWords as words } from '#words/outputs/outline-output-words.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { mapped } from '../../sewing/problem.ts';
import { outlineFields, PAIR_FIELDS, ROUND_FIELDS, shape } from './fields.ts';
import { pairOf, roundOf } from './worked.ts';

const output = outputOf(outlineFields);
const isRound = { field: 'shape', is: shape.is('rectangle', 'regular', 'free', 'circle') } as const;
const ofRound = { reads: ROUND_FIELDS, when: isRound } as const;
const ofPair = { reads: PAIR_FIELDS, when: { field: 'shape', is: shape.is('pair') } } as const;
const decides = ['by', 'pitch', 'count'] as const;
const punched = {
  datum: 'first-hole',
  stage: 'edge',
  undoable: false,
  caution: holeWords.punch,
} as const;

/** What holes round an outline give: how many, how far apart, and where. */
export const outlineOutputs: Outputs = {
  id: 'outline',
  rule: 1,
  fields: outlineFields,
  outputs: [
    output({
      key: 'margin',
      name: words.margin,
      kind: 'length',
      ...ofRound,
      step: { do: words.scribe, datum: 'raw-edge', stage: 'edge', undoable: true },
      of: (fields) => mapped(roundOf(fields), () => needed({ margin: fields.margin }).margin),
    }),
    output({
      key: 'count',
      name: words.count,
      kind: 'count',
      ...ofRound,
      of: (fields) => mapped(roundOf(fields), ({ count }) => count),
    }),
    output({
      key: 'pitch',
      name: words.pitch,
      kind: 'length',
      ...ofRound,
      of: (fields) => mapped(roundOf(fields), ({ sides: [one] }) => needed({ one }).one.pitch),
    }),
    output({
      key: 'second',
      name: words.second,
      kind: 'length',
      reads: ROUND_FIELDS,
      when: { field: 'shape', is: shape.is('rectangle', 'free') },
      of: (fields) => mapped(roundOf(fields), ({ sides: [, two] }) => needed({ two }).two.pitch),
    }),
    output({
      key: 'holes',
      name: words.holes,
      kind: 'run',
      ...ofRound,
      decides,
      step: { do: words.punch, ...punched },
      of: (fields, { count }) => mapped(roundOf(fields, count), ({ run }) => run),
    }),
    output({
      key: 'pair-count',
      name: words.count,
      kind: 'count',
      ...ofPair,
      of: (fields) => mapped(pairOf(fields), ({ count }) => count),
    }),
    output({
      key: 'one-pitch',
      name: words.pitch,
      kind: 'length',
      ...ofPair,
      of: (fields) => mapped(pairOf(fields), ({ one }) => one.pitch),
    }),
    output({
      key: 'other-pitch',
      name: words.second,
      kind: 'length',
      ...ofPair,
      of: (fields) => mapped(pairOf(fields), ({ other }) => other.pitch),
    }),
    output({
      key: 'longer',
      name: words.longer,
      kind: 'number',
      ...ofPair,
      of: (fields) => mapped(pairOf(fields), ({ longer }) => 100 * longer),
    }),
    output({
      key: 'one-holes',
      name: words.one,
      kind: 'run',
      ...ofPair,
      decides,
      step: { do: words.punchOne, ...punched },
      of: (fields, { count }) => mapped(pairOf(fields, count), ({ one }) => one.run),
    }),
    output({
      key: 'other-holes',
      name: words.other,
      kind: 'run',
      ...ofPair,
      decides,
      step: { do: words.punchOther, ...punched },
      of: (fields, { count }) => mapped(pairOf(fields, count), ({ other }) => other.run),
    }),
  ],
};
