import { seamWords as words } from '#words/seam-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Calculation, Draft } from '../../calculation/calculation.ts';
import { type DraftReader, readDraft } from '../../calculation/draft.ts';
import { countOf, roundIn } from '../../calculation/draft-numbers.ts';
import { chosen } from '../../calculation/fields.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { type Length, length } from '../../lengths/length.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, type Outcome } from '../../sewing/problem.ts';
import { changeAllowance, letOut } from '../../sewing/seam-change.ts';
import { clipCurve } from '../../sewing/seam-clips.ts';
import { finishSeam, leastAllowance, rowProblems, USUAL_ROWS } from '../../sewing/seam-finish.ts';
import type { FinishInput } from '../../sewing/seam-rows.ts';
import { changeAnswer, girthAnswer } from './change-answers.ts';
import { clipAnswer } from './clip-answer.ts';
import { seamFields } from './fields.ts';
import { finishAnswer } from './finish-answer.ts';

/** Seam allowances: what a finish takes, another allowance, letting out, clips. */
export const seam: Calculation = {
  id: 'seam',
  title: words.title,
  start: startingDraft,
  fields: seamFields,
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const outcome = WORK[chosen(draft, 'what', words.what)](read, draft, bench);
    if (read.faults.length > 0 || !outcome) return { ok: false, faults: read.faults };
    return outcome.ok ? { ok: true, answer: outcome.value } : refusedFor(outcome.problems);
  },
};

function startingDraft(bench: Bench): Draft {
  const scale = roundIn(bench);
  return {
    what: 'finish',
    given: scale('1.5', '15', '5/8'),
    finish: 'french',
    first: scale('0.9', '9', '3/8'),
    trim: scale('0.3', '3', '1/8'),
    second: scale('0.6', '6', '1/4'),
    under: scale('0.3', '3', '1/8'),
    turn: scale('0.6', '6', '1/4'),
    allowance: scale('2', '20', '3/4'),
    wanted: scale('1', '10', '3/8'),
    seams: '4',
    way: 'out',
    change: scale('2', '20', '3/4'),
    radius: scale('8', '80', '3'),
    opening: scale('0.2', '2', '1/8'),
    along: '',
  };
}

type Working = (read: DraftReader, draft: Draft, bench: Bench) => Outcome<Answer> | undefined;

const WORK: Readonly<Record<keyof typeof words.what, Working>> = {
  finish: (read, draft, bench) => {
    const given = read.length('given');
    const input = given === undefined ? undefined : finishInput(given, read, draft);
    return input && then(finishSeam(input), (plan) => finishAnswer(plan, input, bench));
  },
  change: (read, _, bench) => {
    const pattern = read.length('given');
    const wanted = read.length('wanted');
    const seams = countOf(read, 'seams');
    if (pattern === undefined || wanted === undefined || seams === undefined) return undefined;
    const input = { pattern, wanted, seams };
    return then(changeAllowance(input), (change) => changeAnswer(change, input, bench));
  },
  girth: (read, draft, bench) => {
    const allowance = read.length('allowance');
    const by = read.length('change');
    const seams = countOf(read, 'seams');
    if (allowance === undefined || by === undefined || seams === undefined) return undefined;
    const out = chosen(draft, 'way', words.way) === 'out';
    const input = finishInput(allowance, read, draft);
    if (input === undefined) return undefined;
    const least = leastAllowance(input);
    const change = out ? by : length(-by);
    return answerUnless([...mustBePositive('change', by), ...rowProblems(input)], () =>
      then(letOut({ allowance, change, seams, least }), (plan) =>
        girthAnswer(plan, { by, seams, out }, bench),
      ),
    );
  },
  curve: (read, _, bench) => {
    const radius = read.length('radius');
    const allowance = read.length('allowance');
    const opening = read.length('opening');
    const along = read.maybeLength('along');
    if (radius === undefined || allowance === undefined || opening === undefined) return undefined;
    const input = { radius, allowance, opening, along };
    return then(clipCurve(input), (clips) => clipAnswer(clips, input, bench));
  },
};

/** A finish on an allowance; undefined when a row of its own could not be read. */
function finishInput(given: Length, read: DraftReader, draft: Draft): FinishInput | undefined {
  const finish = chosen(draft, 'finish', words.finish);
  const own = Object.keys(USUAL_ROWS).filter((key) =>
    seamFields(draft).some((field) => field.key === key),
  );
  const rows = own.map((key) => [key, read.length(key)] as const);
  if (rows.some(([, row]) => row === undefined)) return undefined;
  return { finish, given, ...USUAL_ROWS, ...Object.fromEntries(rows) };
}

function then<Value>(outcome: Outcome<Value>, say: (value: Value) => Answer): Outcome<Answer> {
  return outcome.ok ? { ok: true, value: say(outcome.value) } : outcome;
}
