import type { Bench } from '../calculation/bench.ts';
import type { Calculation, NamedRun } from '../calculation/calculation.ts';
import type { Held } from '../calculation/page.ts';
import { exactLength } from '../lengths/length.ts';
import { runAsMade } from '../sewing/made-run.ts';
import { placeOf } from './as-made.ts';
import { type FollowedMark, nextToMake } from './following.ts';
import { type Garment, inOrder, type Kept, type KeptRun } from './garment.ts';
import { draftFor, marksOf } from './plan.ts';
import type { Blocked, Stop } from './stop.ts';

/** Calculations by their id: one that isn't known to this version, one that can't be fetched. */
export type Known = ReadonlyMap<string, Calculation | 'unknown' | 'missing'>;

/** The first page's calculation is not among the others: one length, and no marks to make. */
const WITHOUT_MARKS = 'convert';

/** Every calculation there is, by its id: each is fetched when it is first wanted. */
type List = Readonly<Record<string, () => Promise<Calculation>>>;

/** Fetches every calculation of a list that something with marks is kept of. */
export async function loadKnown(garment: Garment, list: List): Promise<Known> {
  const all = new Set(garment.kept.map(({ calculation }) => calculation));
  const ids = [...all].filter((id) => id !== WITHOUT_MARKS);
  const loaded = await Promise.all(
    ids.map(async (id): Promise<Calculation | 'unknown' | 'missing'> => {
      try {
        return Object.hasOwn(list, id) ? ((await list[id]?.()) ?? 'unknown') : 'unknown';
      } catch {
        return 'missing';
      }
    }),
  );
  return new Map(loaded.map((one, i) => [ids[i] ?? '', one]));
}

export interface Stops {
  stops: readonly Stop[];
  blocked: readonly Blocked[];
}

/** What is worked out of a draft, so that a mark made works nothing out anew. */
const worked = new WeakMap<Held, { bench: Bench; of: ReturnType<typeof workOf> }>();

/**
 * Every run of marks of a garment, in the order of the work and of the keeping,
 * and what can't be followed.
 *
 * @param only the id of one kept calculation, to follow only that
 */
export function stopsOf(
  garment: Garment,
  known: Known,
  bench: Bench,
  only: string | undefined,
): Stops {
  const stops: Stop[] = [];
  const blocked: Blocked[] = [];
  for (const kept of inOrder(garment)) {
    if (only !== undefined && kept.id !== only) continue;
    if (kept.calculation === WITHOUT_MARKS) continue;
    const calculation = known.get(kept.calculation) ?? 'unknown';
    if (typeof calculation === 'string') blocked.push({ kept, why: calculation });
    else {
      const { work, draft } = workOnce(calculation, kept, bench);
      if (work.ok) stops.push(...stopsIn(calculation, kept, work.answer));
      else {
        const fields = calculation.fields(draft);
        blocked.push({ kept, why: 'faults', faults: work.faults, fields });
      }
    }
  }
  return { stops, blocked };
}

function stopsIn(
  calculation: Calculation,
  kept: Kept,
  { runs, warnings, cautions }: Extract<ReturnType<Calculation['work']>, { ok: true }>['answer'],
): Stop[] {
  const several = runs.filter((named) => marksOf(named).length > 0).length > 1;
  return runs.flatMap((named, run) =>
    marksOf(named).length === 0
      ? []
      : {
          kept,
          run,
          plan: named,
          named: asMade(named, kept.runs[run]),
          oneOfSeveral: several,
          cautions: [...warnings, ...cautions],
          canRespace: calculation.around !== undefined && run === 0,
        },
  );
}

function workOnce(calculation: Calculation, kept: Kept, bench: Bench) {
  const before = worked.get(kept.draft);
  if (before?.bench === bench) return before.of;
  const of = workOf(calculation, kept, bench);
  worked.set(kept.draft, { bench, of });
  return of;
}

function workOf(calculation: Calculation, kept: Kept, bench: Bench) {
  const { draft } = draftFor(calculation, kept, bench);
  return { draft, work: calculation.work(draft, bench) };
}

/** Runs as they were made, so that a mark made elsewhere draws no other run anew. */
const asMadeBefore = new WeakMap<KeptRun, { plan: NamedRun; of: NamedRun }>();

function asMade(plan: NamedRun, kept: KeptRun | undefined): NamedRun {
  if (!kept) return plan;
  const before = asMadeBefore.get(kept);
  if (before?.plan === plan) return before.of;
  const places = Object.entries(kept.made).flatMap(([label, typed]) => {
    const at = placeOf(typed);
    return at === undefined ? [] : [[label, exactLength(at)] as const];
  });
  const run = runAsMade(plan.run, new Map(places));
  const of = run === plan.run ? plan : { ...plan, run };
  asMadeBefore.set(kept, { plan, of });
  return of;
}

/** The mark an address names; where it names none, the first that is not made. */
export function hereIn(
  stops: readonly Stop[],
  { k, run, at }: Readonly<Record<string, string>>,
): FollowedMark | undefined {
  if (at === 'end') return undefined;
  const stop = stops.findIndex((one) => one.kept.id === k && String(one.run) === run);
  const mark = Number(at);
  if (stop >= 0 && Number.isInteger(mark) && stops[stop]?.named.run.marks[mark]) {
    return { run: stop, mark };
  }
  return nextToMake(
    stops.map(({ named, kept, run: place }) => ({
      labels: named.run.marks.map(({ label }) => label),
      kept: kept.runs[place],
    })),
  );
}
