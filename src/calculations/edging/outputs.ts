import { edgingOutputWords as words } from '#words/outputs/edging-output-words.ts';
import {
  type Output,
  type Outputs,
  outputOf,
  runsTaken,
  runTaken,
  sumTaken,
} from '../../calculation/output.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless } from '../../sewing/problem.ts';
import { edgingFields } from './fields.ts';
import { holesOn, spanOf, widestPitch } from './punched.ts';
import { cutStrip, cutWidth, holes, holesTwo, sidesOf } from './row-outputs.ts';

const output = outputOf(edgingFields);

/** Of either row: how many holes, and how far apart. */
function countOf(key: string, name: string, takes: readonly Output[]): Output {
  return output({
    key,
    name,
    kind: 'count',
    reads: [],
    takes,
    adds: true,
    of: (_, more) => ({ ok: true, value: holesOn(runsTaken(more.takes, takes)) }),
  });
}

function pitchOf(key: string, name: string, takes: readonly Output[]): Output {
  return output({
    key,
    name,
    kind: 'length',
    reads: [],
    takes,
    of: (_, more) => widestPitch(runsTaken(more.takes, takes)),
  });
}

const [sides, sidesTwo] = [sidesOf(0), sidesOf(1)];
const [count, countTwo] = [
  countOf('count', words.count[0], [holes, ...sides]),
  countOf('count-2', words.count[1], [holesTwo, ...sidesTwo]),
];

/** What a strip of holes gives: the strip to cut, its holes, how many they are and how far apart. */
export const edgingOutputs: Outputs = {
  id: 'edging',
  rule: 1,
  fields: edgingFields,
  outputs: [
    cutStrip,
    cutWidth,
    holes,
    holesTwo,
    ...sides,
    ...sidesTwo,
    count,
    countTwo,
    output({
      key: 'count-all',
      name: words.all,
      kind: 'count',
      reads: [],
      takes: [count, countTwo],
      adds: true,
      of: (_, { takes }) => ({ ok: true, value: sumTaken(takes) }),
    }),
    pitchOf('pitch', words.pitch[0], [holes, ...sides]),
    pitchOf('pitch-2', words.pitch[1], [holesTwo, ...sidesTwo]),
    output({
      key: 'span',
      name: words.span,
      kind: 'length',
      reads: [],
      takes: [holes],
      of: (_, { takes }) => ({ ok: true, value: spanOf(runTaken(takes, holes)) }),
    }),
    output({
      key: 'margin',
      name: words.margin,
      kind: 'length',
      reads: ['margin'],
      of: ({ margin }) =>
        answerUnless(mustBePositive('margin', margin), () => ({ ok: true, value: margin })),
    }),
  ],
};
