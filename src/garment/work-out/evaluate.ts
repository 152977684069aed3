import type { Given } from '../../calculation/output.ts';
import { exactLength, LONGEST } from '../../lengths/length.ts';
import { MOST_ROW } from '../record/limits.ts';
import type { Fact } from '../record/record.ts';
import { numberOf } from '../record/sound.ts';
import { through } from './doubt.ts';
import { fieldAt, sourceCount } from './field-value.ts';
import type { PutNumber } from './links.ts';
import type { BeforeNode, FactNode, PlanNode } from './node.ts';
import { type Here, type Nothing, nothing, type Result, type Value } from './result.ts';
import { same } from './same.ts';

type Get = (key: string) => Result | undefined;

/** The number of a fact, known to half its tape's graduation either way. */
function made(id: string, fact: Fact): Here {
  const value = numberOf(fact);
  const half = fact.tape / 2;
  const ends = half > 0 ? { [`f:${id}`]: [value - half, value + half] as const } : {};
  return { ok: true, value, ends, state: 'made' };
}

/** What is made stands whatever becomes of what is asked, but where nothing of the kind is asked any more. */
export function evaluateFact({ fact }: FactNode, asked: Result | undefined): Here | Nothing {
  const gone = absence(asked);
  return gone ? nothing(gone) : made(fact.id, fact.fact);
}

/** What was made before the app knew is as planned now: where that has no number, it has none. */
export function evaluateBefore(
  { fact, sources }: BeforeNode,
  asked: Result | undefined,
): Here | Nothing {
  if (!asked?.ok) {
    const plan = sources[0] ?? '';
    const round = !asked || asked.trouble.kind === 'circle';
    return round
      ? nothing({ kind: 'waits', field: '', for: plan, root: plan })
      : nothing(asked.trouble);
  }
  const { value, ends, undecided } = asked;
  return {
    ...{ ok: true, value, ends, state: 'made before' },
    ...(typeof value === 'object' && { made: value.marks.map(() => fact.id) }),
    ...(undecided && { undecided }),
  };
}

/** That a number was taken away; undefined of any other. */
export function absence(result: Result | undefined) {
  return result?.ok === false && result.trouble.kind === 'absent' ? result.trouble : undefined;
}

/** A number as it is asked for, from what it reads; of one that goes round nothing is asked. */
export function evaluatePlan(node: PlanNode, get: Get): Here | Nothing {
  const troubled = node.fields.find(({ trouble }) => trouble);
  if (troubled?.trouble) return nothing(troubled.trouble);
  const found = foundOf(node, get);
  if ('ok' in found) return found;
  const { sources } = found;
  const values = sources.map(({ value }) => value);
  const asked = askedOf(node, found, values);
  if (!asked.ok) return asked;
  const ends = through(node.key, sources, asked.value, (at) => askedOf(node, found, at));
  const { value, given } = asked;
  const sure = node.plusMinus > 0 && typeof value === 'number';
  const own = sure
    ? { [`q:${node.id}`]: [value - node.plusMinus, value + node.plusMinus] as const }
    : {};
  return {
    ok: true,
    value,
    ends: { ...ends, ...own },
    state: stateOf(node, found),
    ...(sources.some(({ undecided }) => undecided) && { undecided: true }),
    ...(node.asked && given && { given }),
  };
}

/** How far a number that isn't made itself rests on what is. */
function stateOf({ early }: PlanNode, { steps }: Found): Here['state'] {
  if (steps.length > 0) return 'partly made';
  return early.length > 0 ? 'made before' : 'planned';
}

/** What the calculation of a number is given now; undefined where there is no number, and of a quantity. */
export function givenOf(node: PlanNode, get: Get): Given | undefined {
  const found = foundOf(node, get);
  if ('ok' in found) return undefined;
  const values = found.sources.map(({ value }) => value);
  const asked = askedOf(node, found, values);
  return asked.ok ? asked.given : undefined;
}

/** What a number is worked out from, as found. */
interface Found {
  sources: Here[];
  /** Keys of the outputs of its own work among them. */
  takes: string[];
  /** Keys of the steps that bend it. */
  steps: string[];
}

/** What it takes, in the order it is used: linked numbers, what was put in a link's place, other outputs, what is made. */
function foundOf(node: PlanNode, get: Get): Found | Nothing {
  const sources: Here[] = [];
  for (const { key, sources: links } of node.fields) {
    for (const link of links) {
      if (link.put) sources.push(put(link.put));
      for (const from of link.keys) {
        const result = get(from);
        if (!result?.ok) return waitsFor(from, key, result);
        sources.push(result);
      }
    }
  }
  const takes: string[] = [];
  for (const [key, from] of node.takes) {
    const result = get(from);
    if (result?.ok) {
      takes.push(key);
      sources.push(result);
    } else if (!absence(result)) return waitsFor(from, key, result);
  }
  const [, first] = node.takes[0] ?? [];
  const gone = first !== undefined && takes.length === 0 && absence(get(first));
  if (gone) return nothing(gone);
  const bends = node.bends.filter(({ asked }) => !absence(get(asked)));
  for (const { fact } of bends) sources.push(made(fact.id, fact.fact));
  return { sources, takes, steps: bends.map(({ step }) => step) };
}

function waitsFor(key: string, field: string, result: Result | undefined): Nothing {
  const waits =
    result?.ok === false && result.trouble.kind === 'waits' ? result.trouble : undefined;
  const by = absence(result)?.field;
  const gone = by !== undefined && { gone: { why: 'absent', by } as const };
  return nothing({ kind: 'waits', field, for: key, root: waits?.root ?? key, ...gone });
}

function put({ value, plusMinus, reading }: PutNumber): Here {
  const sure = typeof value === 'number' && plusMinus > 0;
  const ends = sure ? { [reading]: [value - plusMinus, value + plusMinus] as const } : {};
  return { ok: true, value, ends, state: 'planned' };
}

type Asked = { ok: true; value: Value; given: Given | undefined } | Nothing;

/** The number at these values of its sources. */
function askedOf(node: PlanNode, found: Found, values: readonly Value[]): Asked {
  const fields: Record<string, unknown> = {};
  let next = 0;
  const base = found.sources.map(({ value }) => value);
  for (const field of node.fields) {
    const end = next + sourceCount(field);
    const read = fieldAt(field, values.slice(next, end), base.slice(next, end));
    if (!read.ok) return read;
    fields[field.key] = read.value;
    next = end;
  }
  if (!node.output) return checked(fields.value as Value, undefined);
  const takes = Object.fromEntries(found.takes.map((key, i) => [key, values[next + i] as Value]));
  next += found.takes.length;
  const steps = found.steps.map((step, i) => [step, exactLength(values[next + i] as number)]);
  const count = node.begun && isAsBegun(node.begun.by, fields) ? node.begun.count : undefined;
  const given: Given = { fields, takes, made: Object.fromEntries(steps), count };
  try {
    const outcome = node.output.of(given);
    if (outcome.ok) return checked(outcome.value, given);
    if ('absent' in outcome) return nothing({ kind: 'absent', field: outcome.absent });
    if ('faults' in outcome) return nothing({ kind: 'unread', faults: outcome.faults });
    return nothing({ kind: 'impossible', problems: outcome.problems });
  } catch (error) {
    // A mistake of one calculation must not take the rest of the garment away.
    return nothing({ kind: 'broken', message: String(error) });
  }
}

/** A row keeps its count while the fields that decide it hold what they held. */
function isAsBegun(
  by: Readonly<Record<string, unknown>>,
  fields: Readonly<Record<string, unknown>>,
) {
  return Object.entries(by).every(([key, value]) => same(fields[key], value));
}

/** What is given can be held by a fact. */
function checked(value: Value, given: Given | undefined): Asked {
  const size =
    typeof value === 'number' ? value : Math.max(value.length, value.marks.at(-1)?.at ?? 0);
  const many = typeof value === 'object' && value.marks.length > MOST_ROW;
  if (Math.abs(size) <= LONGEST && !many) return { ok: true, value, given };
  return nothing({ kind: many ? 'too many marks' : 'too large' });
}
