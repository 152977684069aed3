import type { Kind } from '../../calculation/output.ts';
import { LONGEST } from '../../lengths/length.ts';
import type { Run } from '../../sewing/run.ts';
import { MOST_ROW } from './limits.ts';
import type { Begun, Decision, Fact, MadeBefore, Note, Points } from './record.ts';

const KINDS: readonly Kind[] = ['length', 'count', 'number', 'run'];

export function isObject(read: unknown): read is Readonly<Record<string, unknown>> {
  return typeof read === 'object' && read !== null && !Array.isArray(read);
}

export function isKind(read: unknown): read is Kind {
  return KINDS.some((kind) => kind === read);
}

/** A number no sum of which leaves the longest length far behind. */
export function isPlace(read: unknown): read is number {
  return typeof read === 'number' && Math.abs(read) <= 2 * LONGEST;
}

function isRank(read: unknown): read is number {
  return Number.isInteger(read) && (read as number) >= 0 && (read as number) < MOST_ROW;
}

function isPoints(read: unknown): read is Points {
  if (!isObject(read) || !Array.isArray(read.points)) return false;
  const { count, points } = read as { count: unknown; points: readonly unknown[] };
  const ranks = points.map((point) => (isPoint(point) ? point[0] : -1));
  const rising = ranks.every((rank, i) => rank > (ranks[i - 1] ?? -1));
  return rising && ranks[0] === 0 && count === (ranks.at(-1) ?? 0) + 1;
}

function isPoint(read: unknown): read is readonly [number, number] {
  return Array.isArray(read) && isRank(read[0]) && isPlace(read[1]);
}

export function isBegun(read: unknown): read is Begun {
  return isPoints(read) && isObject((read as Partial<Begun>).by);
}

export function isDecision(read: unknown): read is Decision {
  if (!isObject(read)) return false;
  const { way, facts, asked, tolerance, allow } = read;
  const answers = isPlace(asked) || isPoints(asked);
  const named = Array.isArray(facts) && facts.every((id) => typeof id === 'string');
  const far = isPlace(tolerance) && (allow === undefined || isPlace(allow));
  return typeof way === 'string' && named && answers && far;
}

export function isFact(read: unknown): read is Fact {
  if (!isObject(read)) return false;
  const { home, shown, plan, tape, rule, measured, mark } = read;
  const stood = Number.isInteger(shown) && isPlace(shown) && isPlace(plan);
  const made = isPlace(tape) && tape >= 0 && typeof rule === 'number';
  const found = measured === undefined || (Number.isInteger(measured) && isPlace(measured));
  return typeof home === 'string' && stood && made && found && (mark === undefined || isMark(mark));
}

export function isBefore(read: unknown): read is MadeBefore {
  return isObject(read) && read.before === true && typeof read.home === 'string';
}

export function isNote(read: unknown): read is Note {
  if (!isObject(read)) return false;
  const said = [read.text, read.photo].filter((one) => one !== undefined);
  return said.length > 0 && said.every((one) => typeof one === 'string' && one !== '');
}

function isMark(read: unknown): boolean {
  if (!isObject(read)) return false;
  const { rank, of, asked } = read;
  const counted = Number.isInteger(of) && (of as number) <= MOST_ROW;
  return counted && isRank(rank) && rank < (of as number) && isPlace(asked);
}

/** A run as a link's place may hold it. */
export function isRun(read: unknown): read is Run {
  if (!isObject(read) || !Array.isArray(read.marks) || read.marks.length > MOST_ROW) return false;
  const { datum, length, marks } = read as { datum: unknown; length: unknown; marks: unknown[] };
  const all = marks.every((mark) => isObject(mark) && isPlace(mark.at) && isNamed(mark));
  return typeof datum === 'string' && Number.isInteger(length) && isPlace(length) && all;
}

function isNamed({ label, kind }: Readonly<Record<string, unknown>>): boolean {
  return typeof label === 'string' && typeof kind === 'string';
}
