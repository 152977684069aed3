import { turnedWords } from '#words/common/turned-words.ts';
import { hemOutputWords as words } from '#words/outputs/hem-output-words.ts';
import { type Comes, type MadeSteps, type Outputs, outputOf } from '../../calculation/output.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { hem } from '../../sewing/hems/hem.ts';
import { hemAsPressed, type PressedHem } from '../../sewing/hems/hem-made.ts';
import type { Outcome } from '../../sewing/problem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { curveOutputs } from './curve-outputs.ts';
import { hemFields } from './fields.ts';
import { type HemAsked, hemInput, TURN_FIELDS } from './read.ts';
import { taperOutputs } from './taper-outputs.ts';

const output = outputOf(hemFields);
const { style } = hemFields.specs;

/** What is turned up has to fit the cloth there is; what it takes is asked before that is cut. */
const PRESS_FIELDS = [...TURN_FIELDS, 'left'] as const;
const STITCH_FIELDS = [...PRESS_FIELDS, 'edgeStitch'] as const;

const turned = { field: 'style', is: style.is('double', 'unequal', 'narrow') } as const;
const press = {
  datum: 'raw-edge',
  stage: 'turn-up',
  undoable: true,
  caution: turnedWords.iron(IRON_ONE_DOT.value),
} as const;

const firstPress = output({
  key: 'first-press',
  name: words.firstPress,
  kind: 'length',
  reads: PRESS_FIELDS,
  when: turned,
  step: { do: words.press, ...press },
  of: (fields) => there(lines(fields), ({ firstPress }) => firstPress),
});

const hemLine = output({
  key: 'hem-line',
  name: words.hemLine,
  kind: 'length',
  reads: PRESS_FIELDS,
  bentBy: [firstPress],
  step: { do: words.pressHem, ...press },
  of: (fields, { made }) => there(lines(fields, made), ({ hemLine }) => hemLine),
});

const bentBy = [firstPress, hemLine];

/** What a hem gives: what it takes of its piece, its lines as the hand makes them, its curve and its taper. */
export const hemOutputs: Outputs = {
  id: 'hem',
  rule: 1,
  fields: hemFields,
  outputs: [
    ...taperOutputs,
    firstPress,
    hemLine,
    output({
      key: 'stitch',
      name: words.stitch,
      kind: 'length',
      reads: STITCH_FIELDS,
      bentBy,
      step: { do: words.sew, datum: 'raw-edge', stage: 'turn-up', undoable: true },
      of: (fields, { made }) => there(lines(fields, made), ({ stitch }) => stitch),
    }),
    output({
      key: 'stitch-up',
      name: words.stitchUp,
      kind: 'length',
      bound: 'most',
      reads: STITCH_FIELDS,
      bentBy,
      of: (fields, { made }) => there(lines(fields, made), ({ stitchUp }) => stitchUp),
    }),
    output({
      key: 'allowance',
      name: words.allowance,
      kind: 'length',
      edge: true,
      reads: TURN_FIELDS,
      bentBy,
      of: (fields, { made }) => there(lines(fields, made), ({ allowance }) => allowance),
    }),
    output({
      key: 'depth',
      name: words.depth,
      kind: 'length',
      reads: TURN_FIELDS,
      bentBy,
      of: (fields, { made }) => there(lines(fields, made), ({ depth }) => depth),
    }),
    output({
      key: 'chalk-first',
      name: words.chalkFirst,
      kind: 'length',
      reads: PRESS_FIELDS,
      when: turned,
      of: (fields) => there(lines(fields), ({ foldTo }) => foldTo.first),
    }),
    output({
      key: 'chalk-hem',
      name: words.chalkHem,
      kind: 'length',
      reads: PRESS_FIELDS,
      bentBy: [firstPress],
      of: (fields, { made }) => there(lines(fields, made), ({ foldTo }) => foldTo.second),
    }),
    ...curveOutputs,
  ],
};

/** The lines of the hem, by the presses that are made. */
function lines(fields: HemAsked, made: MadeSteps = {}): Outcome<PressedHem> {
  const input = hemInput(fields);
  if (!input.ok) return input;
  const plan = hem(input.value);
  if (!plan.ok) return plan;
  const presses = { firstPress: made['first-press'], hemLine: made['hem-line'] };
  const keeps = fields.given === 'all' ? 'hem-line' : 'depth';
  return { ok: true, value: hemAsPressed(plan.value, input.value.depth, presses, keeps) };
}

/** One of the lines; a first turn of nothing has none. */
function there(
  lines: Outcome<PressedHem>,
  which: (lines: PressedHem) => ExactLength | undefined,
): Comes<ExactLength> {
  if (!lines.ok) return lines;
  const line = which(lines.value);
  return line === undefined ? { ok: false, absent: 'turn' } : { ok: true, value: line };
}
