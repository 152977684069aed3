import { type Bench, tapeStep } from '../../../calculation/bench.ts';
import type { Kind, Output } from '../../../calculation/output.ts';
import { roundingOf } from '../../../calculation/step-rounding.ts';
import { onTape } from '../../../calculation/tape-text.ts';
import { todays, turnParts } from '../../../garment/actions/put.ts';
import { edit, edited } from '../../../garment/actions/slots.ts';
import type { State } from '../../../garment/actions/state.ts';
import { pendingOf, previewOf, slotOf } from '../../../garment/actions/typing.ts';
import { homeOf, readHome } from '../../../garment/record/home.ts';
import { NOTHING } from '../../../garment/rows/points.ts';
import type { Result } from '../../../garment/work-out/result.ts';
import { type Answer, type Memory, workOut } from '../../../garment/work-out/work-out.ts';
import { exactLength } from '../../../lengths/length.ts';
import { foundText, handText } from '../said/value-text.ts';
import type { OpenWork } from './open-work.ts';

/** A number that a work gives. */
export interface Gives {
  home: string;
  output: Output;
  result: Result;
  /** Of a row the place of the next mark; undefined while there is none. */
  number: number | undefined;
  /** Of a step that was made before the app knew: the fact that says so. */
  before?: string;
}

/**
 * What an open work comes to with what is being typed: at once, since only the work itself is worked
 * out, with the numbers of now in the place of what it takes.
 */
export function answerOf(state: State, open: OpenWork): Answer {
  const pending = pendingOf(state.record);
  if (!pending) return state.answer;
  if (!open.draft) return previewOf(state);
  const { record } = state;
  const typed = edited(record, [edit(record, slotOf(pending.place), pending.parts)]);
  const facts = Object.entries(typed.facts).filter(([, fact]) => {
    const home = (fact as { home?: unknown } | null)?.home;
    return typeof home === 'string' && readHome(home).id === open.id;
  });
  const alone = {
    ...typed,
    ...{ quantities: {}, works: { [open.id]: typed.works[open.id] } },
    facts: Object.fromEntries(facts),
  };
  const put = turnParts({ ...state, record: alone }, (part) =>
    'link' in part ? todays(state, part, open.side) : part,
  );
  const now = workOut(edited(alone, put), state.known, aloneBefore.get(state.answer));
  aloneBefore.set(state.answer, now.memory);
  return now;
}

/** What the key before came to: what doesn't read the field that is typed into is not worked out again. */
const aloneBefore = new WeakMap<Answer, Memory>();

/** The numbers a work gives on the side that is open, in the order they are declared. */
export function givesOf({ id, side, seen }: OpenWork, answer: Answer): Gives[] {
  return (seen.outputs?.outputs ?? []).flatMap((output): Gives[] => {
    const home = homeOf(id, side, output.key);
    const result = answer.values.get(home);
    const before = answer.sound.before.get(home)?.id;
    const made = before !== undefined && { before };
    return result ? [{ home, output, result, number: numberIn(result), ...made }] : [];
  });
}

/** Of a number that adds over the sides of a work, that of all of them; undefined where one isn't known. */
export function totalOf(
  { home, output, number }: Gives,
  { values }: Pick<Answer, 'values'>,
  sides: readonly string[],
): number | undefined {
  if (!output.adds || output.kind === 'run' || sides.length < 2) return undefined;
  const { id, side, key } = readHome(home);
  const all = sides.map((one) => {
    const result = one === side ? undefined : values.get(homeOf(id, one, key));
    return one === side ? number : result && numberIn(result);
  });
  return all.every((one) => one !== undefined) ? all.reduce((sum, one) => sum + one, 0) : undefined;
}

function numberIn(result: Result): number | undefined {
  if (!result.ok) return undefined;
  const { value, made } = result;
  if (typeof value === 'number') return value;
  return (value.marks.find((_, i) => made?.[i] === undefined) ?? value.marks.at(-1))?.at;
}

/**
 * What the work gives next: of the numbers that change with what is typed the first, else the step
 * that is to be made next, else any. Never the number that was just typed.
 *
 * @param typed the number in the field that is typed into; a length in 1/8000 mm
 */
export function headlineOf(
  gives: readonly Gives[],
  settled: Answer,
  typed: number | undefined,
): Gives | undefined {
  const can = gives.filter(
    ({ number }) => number !== undefined && !(typed !== undefined && isNear(number, typed)),
  );
  const open = settled.steps.filter(({ made, of }) => made !== of);
  const wanted = open.filter(({ passed }) => !passed);
  const toMake = new Set([...wanted, ...open].map(({ home }) => home));
  const isNext = ({ home }: Gives) => toMake.has(home);
  const isChanged = ({ home, number = 0 }: Gives) => {
    const before = settled.values.get(home);
    const was = before && numberIn(before);
    return typed !== undefined && (was === undefined || !isNear(was, number));
  };
  return (
    can.find((one) => isChanged(one) && isNext(one)) ??
    can.find(isChanged) ??
    firstOf(toMake, can) ??
    can[0]
  );
}

/** What the first of these steps makes, in the order of the work: that of the numbers may be another. */
function firstOf(homes: Iterable<string>, can: readonly Gives[]): Gives | undefined {
  const given = new Map(can.map((one) => [one.home, one]));
  for (const home of homes) if (given.has(home)) return given.get(home);
  return undefined;
}

function isNear(one: number, other: number): boolean {
  return Math.abs(one - other) < NOTHING;
}

/**
 * A number as the hand takes it: a step's on the tape, to the side its step rounds it; any other, and what
 * would be nothing on the tape, as it is found.
 */
export function numberText({ kind, step, bound }: Output, number: number, bench: Bench): string {
  const round = roundingOf(step);
  if (!step || !isLengthKind(kind)) return foundText(kind, number, bench, bound && { bound });
  if (round(exactLength(number), tapeStep(bench)) === 0) return handText(kind, number, bench, step);
  return onTape(exactLength(number), bench, round);
}

function isLengthKind(kind: Kind): boolean {
  return kind === 'length' || kind === 'run';
}
