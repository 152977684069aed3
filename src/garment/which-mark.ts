import { madeOf, placeOf, plannedOf } from './as-made.ts';
import type { KeptRun } from './garment.ts';
import { paired } from './paired.ts';

/** A mark of a run as it is worked out now. */
export interface PlannedMark {
  label: string;
  /** Its place from the datum, in 1/8000 mm. */
  at: number;
  /** It is where it was measured, and never moves. */
  sewn: boolean;
  /** It is one of a row of like marks, along one line: each may be what was made there. */
  alike: boolean;
}

/** A mark that is made. */
export interface Fact {
  label: string;
  /** As typed; empty when it was made as planned. */
  typed: string;
  planned: number | undefined;
  /** Where it is, in 1/8000 mm; undefined where what was typed can't be read. */
  at: number | undefined;
}

export function factsOf(run: KeptRun): Fact[] {
  return Object.entries(run.made).map(([label, typed]) => {
    const planned = plannedOf(run, label);
    return { label, typed, planned, at: typed === '' ? planned : placeOf(typed) };
  });
}

interface Matched {
  /** What is made, by the label of the mark it is of. */
  of: ReadonlyMap<string, Fact>;
  left: readonly Fact[];
}

export function byLabels(facts: readonly Fact[], marks: readonly PlannedMark[]): Matched {
  const labels = new Set(marks.map(({ label }) => label));
  const found = facts.filter(({ label }) => labels.has(label));
  return {
    of: new Map(found.map((fact) => [fact.label, fact])),
    left: facts.filter((fact) => !found.includes(fact)),
  };
}

/** What can't be read is nowhere: it stays with its label where that is free. */
export function byPlaces(facts: readonly Fact[], marks: readonly PlannedMark[]): Matched {
  const somewhere = facts.flatMap((fact) => (fact.at === undefined ? [] : [{ fact, at: fact.at }]));
  const made = somewhere.sort((a, b) => a.at - b.at);
  const asked = [...marks].sort((a, b) => a.at - b.at);
  const more = made.length > asked.length;
  const places = [made.map(({ at }) => at), asked.map(({ at }) => at)] as const;
  const partners = more ? paired(places[1], places[0]) : paired(places[0], places[1]);
  const of = new Map<string, Fact>();
  partners.forEach((partner, i) => {
    const [mark, one] = more ? [asked[i], made[partner]] : [asked[partner], made[i]];
    if (mark && one) of.set(mark.label, one.fact);
  });
  const labels = new Set(marks.map(({ label }) => label));
  for (const fact of facts) {
    const free = labels.has(fact.label) && !of.has(fact.label);
    if (fact.at === undefined && free) of.set(fact.label, fact);
  }
  const taken = new Set(of.values());
  const inOrder = [...made.map(({ fact }) => fact), ...facts.filter(({ at }) => at === undefined)];
  return { of, left: inOrder.filter((fact) => !taken.has(fact)) };
}

/** Whether the plan is as it was kept, so that every mark is the one of its label. */
export function isAsBefore(old: KeptRun, marks: readonly PlannedMark[], step: number): boolean {
  const asked = Object.keys(old.planned);
  return (
    asked.length === marks.length &&
    marks.every(({ label, at, sewn }) => {
      const planned = plannedOf(old, label);
      if (!sewn) return planned === at;
      const said = madeOf(old, label);
      const place = said === '' ? planned : said && placeOf(said);
      return typeof place === 'number' && Math.abs(place - at) <= step / 2;
    })
  );
}
