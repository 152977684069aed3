import { asTyped } from '../../calculation/draft-text.ts';
import { toGraduation } from '../../lengths/graduation.ts';
import { exactLength, type Length, length } from '../../lengths/length.ts';
import type { Parts } from '../record/record.ts';
import { type KnownFact, numberOf } from '../record/sound.ts';
import { NOTHING } from '../rows/points.ts';
import { askedKey } from '../work-out/node.ts';
import type { Result } from '../work-out/result.ts';
import type { Answer } from '../work-out/work-out.ts';
import { type GivingField, givingFields } from './giving-way.ts';
import { type State, settle } from './state.ts';
import { type FieldPlace, typedEdits } from './typing.ts';

/** A field that takes up what something made lacks or has over, and all that follows from it. Lengths are in 1/8000 mm. */
export interface TakeUp {
  place: FieldPlace;
  parts: Parts;
  before: number;
  after: number;
  answer: Answer;
}

/** How many fields are tried: each means to work the garment out a few times. */
const MOST_TRIED = 8;
/** How far a field is moved to see what comes of it, where what is lacking can't be put into it: 1 mm. */
const STEP = 8000;

/**
 * The fields any one of which may take up the difference of what is made at a home, so that it is as
 * asked: each with the number it then has. None of a row that is still under way, nor where something
 * else of the garment would be in the way then.
 */
export function takeUps(state: State, home: string): TakeUp[] {
  const made = madeAt(state.answer, home);
  const isOpen = state.answer.conflicts.some((one) => one.home === home);
  if (!made || !isOpen) return [];
  return givingFields(state, home)
    .slice(0, MOST_TRIED)
    .flatMap((field) => takeUp(state, home, made, field) ?? []);
}

/** What is made, as one number: of a row that of its mark which is farthest off. */
interface MadeNumber {
  value: number;
  /** The graduation it was made with. */
  tape: number;
  /** What is asked there. */
  of(asked: Result | undefined): number | undefined;
}

function madeAt({ nodes, values }: Answer, home: string): MadeNumber | undefined {
  const node = nodes.get(home);
  if (node?.form === 'fact' && node.kind === 'length') {
    const { fact } = node.fact;
    const of = (asked: Result | undefined) =>
      asked?.ok && typeof asked.value === 'number' ? asked.value : undefined;
    return { value: numberOf(fact), tape: fact.tape, of };
  }
  return node?.form === 'row' ? farthest(node.facts, values.get(askedKey(home))) : undefined;
}

function farthest(facts: readonly KnownFact[], asked: Result | undefined): MadeNumber | undefined {
  if (!asked?.ok || typeof asked.value !== 'object') return undefined;
  const { marks } = asked.value;
  const off = facts.map(({ fact }, i) => Math.abs(numberOf(fact) - (marks[i]?.at ?? 0)));
  const rank = off.indexOf(Math.max(...off));
  const fact = facts[rank]?.fact;
  if (!fact) return undefined;
  const of = (now: Result | undefined) =>
    now?.ok && typeof now.value === 'object' && now.value.marks.length === facts.length
      ? now.value.marks[rank]?.at
      : undefined;
  return { value: numberOf(fact), tape: fact.tape, of };
}

/** Solved by one step along the line through two tries: what is asked of a length mostly goes as it does. */
function takeUp(
  state: State,
  home: string,
  made: MadeNumber,
  field: GivingField,
): TakeUp | undefined {
  const key = askedKey(home);
  const start = made.of(state.answer.values.get(key));
  if (start === undefined) return undefined;
  const lacks = made.value - start;
  for (const by of [lacks, -lacks, STEP]) {
    const there = trial(state, field, field.value + by);
    const moved = there && made.of(there.answer.values.get(key));
    if (moved === undefined) continue;
    if (Math.abs(moved - start) < NOTHING) return undefined;
    const wanted = field.value + (by * lacks) / (moved - start);
    return numbersFor(wanted, made.tape)
      .map((value) => trial(state, field, value))
      .find((one) => one && solves(state.answer, one.answer, home));
  }
  return undefined;
}

/** On the tape where that is as good as there; else exactly. */
function numbersFor(wanted: number, tape: number): number[] {
  const near = tape > 0 ? toGraduation(exactLength(wanted), tape as Length) : wanted;
  return Math.abs(near - wanted) <= tape / 4 ? [near, wanted] : [wanted];
}

function trial(state: State, { place, typed, value }: GivingField, to: number): TakeUp | undefined {
  const after = Math.round(to);
  if (after < 0) return undefined;
  const text = asTyped(length(after), {
    unit: typed.unit,
    decimalMark: typed.mark ?? '.',
  });
  const parts = [{ ...typed, text }];
  const done = settle(state, 'choose', typedEdits(state, { place, parts }), { now: 0 });
  if (done.refused) return undefined;
  return { place, parts, before: value, after, answer: done.state.answer };
}

/** What is made is as asked then, nothing else is otherwise than asked that wasn't, and no number is lost. */
function solves(before: Answer, after: Answer, home: string): boolean {
  const known = new Set(before.conflicts.map((one) => one.home));
  const clear = after.conflicts.every((one) => one.home !== home && known.has(one.home));
  return (
    clear && [...before.values].every(([key, was]) => !was.ok || after.values.get(key)?.ok === true)
  );
}
