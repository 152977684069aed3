import type { Given, Kind, Output } from '../../calculation/output.ts';
import { roundingOf } from '../../calculation/step-rounding.ts';
import { exactLength, type Length } from '../../lengths/length.ts';
import type { Begun, Fact } from '../record/record.ts';
import { isRun } from '../record/sound-values.ts';
import { pointsOf } from '../rows/points.ts';
import { placesIn } from '../rows/row.ts';
import { readDigest } from '../work-out/digest.ts';
import { givenOf } from '../work-out/evaluate.ts';
import { askedKey } from '../work-out/node.ts';
import type { Here } from '../work-out/result.ts';
import { same } from '../work-out/same.ts';
import type { Answer } from '../work-out/work-out.ts';
import { type Edit, edit } from './slots.ts';
import { type Done, isThere, type Refused, refuse, type State, settle } from './state.ts';

/** A press on the key. */
export interface Making {
  home: string;
  /** The new fact's id; several get it with their numbers behind. */
  id: string;
  /** The graduation of the tape in hand, in 1/8000 mm. */
  tape: number;
  now: number;
  /** What the key showed: where it is another number now, nothing is stored. */
  shown?: number;
  measured?: number;
  /** Which mark of a row, else the next. */
  rank?: number;
  /** All marks still to come before this one, together. */
  upTo?: number;
  /** Steps made with the same press, as left and right are that lie on each other: their homes. */
  also?: readonly string[] | undefined;
}

/** What a key shows of a number: as its step rounds it. */
export function shownOn(
  tape: number,
  { kind, output }: { kind: Kind; output?: Output } = { kind: 'length' },
  value: number,
): number {
  return kind === 'length' || kind === 'run'
    ? roundingOf(output?.step)(exactLength(value), tape as Length)
    : Math.round(value);
}

/** Makes a step, a mark of a row, or several: one press, each one fact. */
export function make(state: State, making: Making): Done {
  const { home, also = [], id, now } = making;
  const homes = [...new Set([home, ...also])];
  const facts: Fact[] = [];
  for (const one of homes) {
    const made = factsAt(state, { ...making, home: one });
    if ('why' in made) return refuse(state, made);
    facts.push(...made);
  }
  const ids = facts.map((_, i) => (facts.length > 1 ? `${id}-${i + 1}` : id));
  if (ids.some((one) => isThere(state, ['facts', one]))) return refuse(state, { why: 'id taken' });
  const edits = facts.map((fact, i) => edit(state.record, ['facts', ids[i] ?? id], fact));
  const beside = homes.flatMap((one) => [...begun(state, one), takenUp(state, one)]);
  return settle(state, 'make', [...edits, ...beside], { now, press: true });
}

/** What is made is passed over no more. */
export function takenUp({ record }: State, home: string): Edit {
  return edit(record, ['passed', home], undefined);
}

/** The facts of one home, or why it is not made. */
function factsAt(state: State, making: Making): Fact[] | Refused {
  const { home, tape, shown } = making;
  const step = state.answer.steps.find((one) => one.home === home);
  const result = state.answer.values.get(home);
  if (!step || !result) return { why: 'not there', what: 'step' };
  if (step.made === step.of) return { why: 'all made' };
  if (!result.ok) return { why: 'waits', home, trouble: result.trouble };
  if (!step.ready) return { why: 'undecided' };
  if (!(Number.isInteger(tape) && tape > 0)) return { why: 'no tape' };
  const facts = factsFor(state, result, making);
  const [first] = facts;
  if (!first) return { why: 'not there', what: 'mark' };
  const stale = shown !== undefined && first.shown !== shown;
  return stale ? { why: 'stale', shown: first.shown } : facts;
}

function factsFor(state: State, result: Here, making: Making): Fact[] {
  const { home, tape, now, measured } = making;
  const { answer } = state;
  const node = answer.nodes.get(home);
  const rule = ruleOf(state, home);
  const read = readNow(answer, home);
  const base = { home, rule, read, when: now, ...(measured !== undefined && { measured }) };
  const { value } = result;
  if (typeof value === 'number') {
    const own = (node?.kind ?? 'length') === 'length' ? tape : 0;
    return [{ ...base, shown: shownOn(tape, node, value), plan: value, tape: own }];
  }
  const asked = answer.values.get(askedKey(home)) ?? result;
  const askedRun = asked.ok && typeof asked.value === 'object' ? asked.value : value;
  const of = value.marks.length;
  return ranksFor(result, making).map((rank): Fact => {
    const plan = value.marks[rank]?.at ?? 0;
    const there = askedRun.marks.length === of ? askedRun.marks[rank]?.at : undefined;
    const mark = { rank, of, asked: there ?? plan };
    return { ...base, shown: shownOn(tape, node, plan), plan, tape, mark };
  });
}

/** Which marks still to come are meant; none where one of them isn't. */
function ranksFor({ value, made }: Here, { rank, upTo }: Making): number[] {
  const count = typeof value === 'object' ? value.marks.length : 0;
  const all = Array.from({ length: count }, (_, i) => i);
  const open = all.filter((i) => made?.[i] === undefined);
  if (upTo !== undefined) return open.filter((i) => i < upTo);
  if (rank !== undefined) return open.includes(rank) ? [rank] : [];
  return open.slice(0, 1);
}

/** What is kept of a run that decides how many there are. */
const FOLLOWED = 'followed';

/** What a row keeps from its first made mark on. */
function begun(state: State, home: string): Edit[] {
  const result = state.answer.values.get(home);
  const made = state.answer.sound.facts.get(home)?.length ?? 0;
  if (made > 0 || !result?.ok || typeof result.value !== 'object') return [];
  const output = state.answer.nodes.get(home)?.output;
  const fields = givenFor(state.answer, home)?.fields ?? {};
  const by = (output?.decides ?? []).filter((key) => fields[key] !== undefined);
  const kept: Begun = {
    ...pointsOf(placesIn(result.value)),
    // A run that is followed is never the same as this: a row that follows keeps no count.
    by: Object.fromEntries(by.map((key) => [key, isRun(fields[key]) ? FOLLOWED : fields[key]])),
  };
  return [edit(state.record, ['begun', home], kept)];
}

/** What a step reads now, in a few letters: a fact made of just that has the same. */
export function readNow(answer: Answer, home: string): string {
  const given = givenFor(answer, home);
  return given ? readDigest(given) : '';
}

function givenFor(answer: Answer, home: string): Given | undefined {
  const node = answer.nodes.get(askedKey(home)) ?? answer.nodes.get(home);
  return node?.form === 'plan' ? givenOf(node, (key) => answer.values.get(key)) : undefined;
}

function ruleOf({ answer }: State, home: string): number {
  const id = answer.nodes.get(home)?.id ?? '';
  return answer.works.get(id)?.outputs?.rule ?? 0;
}

/** Takes a fact back; with the last of a row also what it began with, and what was decided of it. */
export function unmake(state: State, id: string, now: number): Done {
  const fact = state.record.facts[id] as Partial<Fact> | undefined;
  if (!isThere(state, ['facts', id])) return refuse(state, { why: 'not there', what: 'fact' });
  const home = typeof fact?.home === 'string' ? fact.home : '';
  const others = Object.entries(state.record.facts).some(
    ([other, one]) => other !== id && same((one as Partial<Fact> | null)?.home, home),
  );
  const row = others ? [] : [['begun', home] as const, ['decisions', home] as const];
  const slots = [['facts', id] as const, ...row];
  const edits = slots.map((slot) => edit(state.record, slot, undefined));
  return settle(state, 'unmake', edits, { now, press: true });
}
