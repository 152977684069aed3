import type { Run } from '../../sewing/run.ts';
import type { Decision, Points } from '../record/record.ts';
import { NOTHING, placesOf, pointsOf } from './points.ts';
import { type MadeMark, placesIn, type Row, runAt } from './row.ts';
import { rowBy, type UnderWay, type Way } from './ways.ts';
import { ranksOf } from './which-mark.ts';

/** A row under way, and how it may be asked for with other numbers of marks. */
export interface RowAsked extends UnderWay {
  begun: Points | undefined;
  decision: Decision | undefined;
  /** How sure the place of each mark is. */
  doubt(rank: number): number;
  /** The row with so many marks; without a number as many as would be asked for today. */
  askFor(count: number | undefined): Run | undefined;
}

export interface RowNow {
  /** The row as it stands: undefined where nothing can be placed. */
  row: Row | undefined;
  /** The facts that differ from what is asked, and nothing answers. */
  conflict: readonly string[];
  /** Nothing says yet how the rest is to be placed. */
  undecided: boolean;
  /** Fewer are asked for than are made. */
  fewer: boolean;
}

/** A way out of a conflict, with the row it gives. */
export interface WayOut {
  way: string;
  row?: Row;
}

/** What stands of a row: what is made where it is made, the rest by what was decided. */
export function rowNow(given: RowAsked): RowNow {
  const { asked, made, decision } = given;
  const holds = decision !== undefined && isKnown(decision.way) && holdsFor(decision, given);
  const count = holds ? countOf(decision.way) : undefined;
  const conflict = offOf(given).filter((mark) => !(holds && answers(decision, mark)));
  const told = {
    conflict: conflict.map(({ id }) => id),
    fewer: made.length > (count ?? asked.marks.length),
  };
  if (made.length >= asked.marks.length && count === undefined) {
    return { ...told, undecided: conflict.length > 0, row: allMade(given) };
  }
  const row =
    conflict.length > 0
      ? (rowBy('as-begun', given) ?? rowBy('asked', given))
      : ((holds ? rowFor(decision.way, given) : undefined) ??
        rowBy('asked', given) ??
        rowBy('spread', given));
  return { ...told, undecided: conflict.length > 0 || row === undefined, row };
}

/** Every way out there is, with its numbers; `as-begun` first. */
export function waysOut(given: RowAsked): WayOut[] {
  const { asked, made } = given;
  const count = asked.marks.length;
  if (made.length >= count) return [{ way: 'noted', row: allMade(given) }];
  const today = given.askFor(undefined)?.marks.length ?? count;
  const counts = [...new Set([count + 1, count - 1, today])].filter((one) => one !== count);
  const names = ['as-begun', 'spread', 'asked', ...counts.map((one) => `count:${one}`)];
  return names.flatMap((way) => {
    const row = rowFor(way, given);
    return row ? [{ way, row }] : [];
  });
}

/** What a decision is kept with of the row it answers. @param allow how far off the maker lets it be */
export function answeredBy(
  { asked, made }: UnderWay,
  allow = 0,
): Pick<Decision, 'asked' | 'tolerance'> {
  const tolerance = made.reduce((most, { slack }) => Math.max(most, slack), allow);
  return { asked: pointsOf(placesIn(asked)), tolerance };
}

function rowFor(way: string, given: RowAsked): Row | undefined {
  const count = countOf(way);
  if (count !== undefined) {
    const other = count >= given.made.length ? given.askFor(count) : undefined;
    // A row that follows another has as many as that one.
    if (other?.marks.length !== count) return undefined;
    return rowBy('spread', { ...given, asked: other, begun: undefined });
  }
  return isWay(way) ? rowBy(way, given) : undefined;
}

/** A way that a newer build has decides nothing here. */
function isKnown(way: string): boolean {
  return isWay(way) || way === 'noted' || countOf(way) !== undefined;
}

function isWay(way: string): way is Way {
  return way === 'as-begun' || way === 'spread' || way === 'asked';
}

function countOf(way: string): number | undefined {
  const count = /^count:(\d{1,5})$/.exec(way)?.[1];
  return count === undefined ? undefined : Number(count);
}

/** Made marks that differ from what is asked; of more than are asked it is said, and not asked about. */
function offOf({ asked, made, doubt, decision }: RowAsked): MadeMark[] {
  const places = placesIn(asked);
  const allow = (decision && isKnown(decision.way) && decision.allow) || 0;
  if (made.length > places.length) return [];
  const ranks = ranksOf(made, places);
  return made.filter((mark, i) => {
    const rank = ranks[i] ?? 0;
    const place = places[rank] ?? 0;
    const slack = Math.max(mark.slack, doubt(rank), allow) + NOTHING;
    if (Math.abs(mark.at - place) <= slack) return false;
    // Made to what the key showed, and the same is asked now as then.
    const asShown = Math.abs(mark.at - mark.plan) <= slack && mark.of === places.length;
    return !(asShown && Math.abs(mark.asked - place) <= slack);
  });
}

/** A decision holds while what is asked is what it answered. */
function holdsFor({ asked, tolerance }: Decision, given: RowAsked): boolean {
  if (typeof asked === 'number' || asked.count !== given.asked.marks.length) return false;
  const then = placesOf(asked);
  return placesIn(given.asked).every(
    (at, rank) =>
      Math.abs((then[rank] ?? 0) - at) <= Math.max(tolerance, given.doubt(rank)) + NOTHING,
  );
}

/** Whether it names a mark, or that one came after it and is within what the maker allows of what was shown. */
function answers({ facts, allow = 0 }: Decision, { id, at, plan, slack }: MadeMark): boolean {
  return facts.includes(id) || Math.abs(at - plan) <= Math.max(slack, allow) + NOTHING;
}

function allMade({ asked, made }: UnderWay): Row {
  const facts = made.map(({ id }) => id);
  return runAt(
    asked,
    made.map(({ at }) => at),
    facts,
  );
}
