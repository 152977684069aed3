import { inMm, placeOf } from '../as-made.ts';
import type { KeptRun } from '../garment.ts';
import { homeOf } from './home.ts';
import type { Begun, Fact } from './record.ts';

/** What a mark was made with isn't known: a tape of millimetres. */
const TAPE_UNSAID = 8000;
/** So near, in 1/8000 mm, a mark was made where another is planned: half of such a tape's graduation. */
const SAME_PLACE = TAPE_UNSAID / 2;

/** The key of a run that only its place among the runs of its calculation is known of, from 0. */
export function runKey(place: number): string {
  return `#${place}`;
}

/** What was kept of the runs of a calculation. */
interface Runs {
  runs: readonly KeptRun[];
}

/** What is made of its runs. */
export function factsOf({ runs }: Runs, own: string, when: number): Record<string, Fact> {
  const all = runs.flatMap((run, place) =>
    madeOf(run, homeOf(own, '', runKey(place)), when).map(
      (fact, j) => [`${own}-${place}-${j + 1}`, fact] as const,
    ),
  );
  return Object.fromEntries(all);
}

/** What its runs under way were planned as. */
export function begunIn({ runs }: Runs, own: string, when: number): Record<string, Begun> {
  const all = runs.flatMap((run, place) => {
    const home = homeOf(own, '', runKey(place));
    const made = madeOf(run, home, when);
    return made.length > 0 ? [[home, begunOf(made, Object.values(run.planned))] as const] : [];
  });
  return Object.fromEntries(all);
}

/** Its made marks, by which of those planned today they are. */
function madeOf({ planned, made }: KeptRun, home: string, when: number): Fact[] {
  const labels = inPlace(planned);
  const ranks = ranksOf(labels, { planned, made });
  const all = Math.max(labels.length, ...[...ranks.values()].map((rank) => rank + 1));
  return [...ranks].map(([label, rank]) => {
    const typed = made[label] ?? '';
    const measured = placeOf(typed);
    const plan = planned[labels[rank] ?? ''] ?? measured ?? 0;
    // What can't be read is kept as it was said.
    const said = typed !== '' && measured === undefined ? { said: typed } : {};
    const mark = { rank, of: all, asked: plan };
    const shown = measured !== undefined && Math.abs(measured - plan) < 1 ? measured : plan;
    const stood = { shown: Math.round(shown), plan, tape: TAPE_UNSAID, rule: 1, read: '', when };
    const elsewhere = measured !== undefined && inMm(measured) !== inMm(stood.shown);
    return { home, ...stood, ...(elsewhere && { measured }), mark, ...said };
  });
}

function inPlace(planned: KeptRun['planned']): string[] {
  return Object.keys(planned).sort((a, b) => (planned[a] ?? 0) - (planned[b] ?? 0));
}

/**
 * Which mark of today each made one is, in order. It was made under a label, and labels are counted
 * anew where there are more or fewer marks: one that lies where another is planned is that one, or
 * the same would be planned beside it once more.
 */
function ranksOf(labels: readonly string[], { planned, made }: KeptRun): Map<string, number> {
  const free = new Set(labels.filter((label) => !Object.hasOwn(made, label)));
  const found: [label: string, rank: number][] = [];
  let beyond = labels.length;
  for (const [label, typed] of Object.entries(made)) {
    const own = labels.indexOf(label);
    const at = placeOf(typed);
    const isOff = (one: string) => Math.abs((planned[one] ?? 0) - (at ?? 0)) > SAME_PLACE;
    const elsewhere = at !== undefined && (own < 0 || isOff(label));
    const other = elsewhere && [...free].find((one) => !isOff(one));
    if (other) free.delete(other);
    found.push([label, other ? labels.indexOf(other) : own >= 0 ? own : beyond++]);
  }
  return new Map(found.sort(([, one], [, two]) => one - two));
}

/** The places as they were planned last, around what is made. */
function begunOf(made: readonly Fact[], planned: readonly number[]): Begun {
  const places = [...planned].sort((a, b) => a - b);
  for (const { mark, measured } of made) {
    if (mark && mark.rank < places.length && measured !== undefined) places[mark.rank] = measured;
  }
  return { count: places.length, points: places.map((at, rank) => [rank, at]), by: {} };
}
