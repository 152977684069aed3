import type { Run } from '../sewing/run.ts';
import type { Page } from './page.ts';
import type { FollowKey, PageKey } from './page-keys.ts';

/** What was measured of marks made, as typed: by mark label. */
export type Made = ReadonlyMap<string, string>;

/** Where a page holds what was measured of a run: each run of a calculation has its own. */
function madeKey(run: number): PageKey {
  return keyOf('made', run);
}

/** Reads `3=15.6; 5=30 1/8 in`. What is not such a pair is passed over. */
export function readMade(text: string): Made {
  const made = new Map<string, string>();
  for (const item of text.split(';')) {
    const cut = item.indexOf('=');
    const label = item.slice(0, cut).trim();
    const typed = item.slice(cut + 1).trim();
    if (cut > 0 && label !== '' && typed !== '') made.set(label, typed);
  }
  return made;
}

/** The same with one mark measured anew; an empty measure takes it out. */
export function writeMade(made: Made, label: string, typed: string): string {
  const next = new Map(made).set(label, typed.trim());
  return writtenMade(new Map([...next].filter(([, measure]) => measure !== '')));
}

/**
 * What a page holds of following one run: it belongs to one plan, and is refused by
 * another one, whose marks of the same labels lie elsewhere.
 */
export interface FollowRecord {
  /** What was measured of this plan's marks. */
  made: Made;
  /** How far it is followed, as typed; undefined at the start. */
  at: string | undefined;
  /** What was measured on other plans, by plan, and is not counted here. */
  refused: ReadonlyMap<string, Made>;
}

/** Reads the follow record of a run; one without a plan, of an older address, is taken as this plan's. */
export function recordOf(page: Page, i: number, run: Run): FollowRecord {
  const here = planOf(run);
  const plan = page[keyOf('plan', i)] || here;
  const refused = new Map(readEarlier(page[keyOf('earlier', i)] ?? ''));
  refused.set(plan, readMade(page[madeKey(i)] ?? ''));
  const made = refused.get(here) ?? new Map();
  for (const [one, its] of refused) if (one === here || its.size === 0) refused.delete(one);
  return { made, at: plan === here ? page[keyOf('at', i)] : undefined, refused };
}

/** Whether a run's follow record is of this plan, and not of another one alone. */
export function isOfPlan(page: Page, i: number, run: Run): boolean {
  const [plan, here] = [page[keyOf('plan', i)] || '', planOf(run)];
  return plan === '' || plan === here || recordOf(page, i, run).made.size > 0;
}

/**
 * The page with a run's follow record changed, and said to be of this plan. What was
 * measured on another plan is set beside it, never dropped.
 */
export function withRecord(
  page: Page,
  i: number,
  run: Run,
  set: { at?: number; made?: string },
): Page {
  const { made, at, refused } = recordOf(page, i, run);
  const measures = set.made ?? writtenMade(made);
  const earlier = [...refused].map(([plan, its]) => `${plan} ${writtenMade(its)}`).join('|');
  return {
    ...page,
    [keyOf('plan', i)]: planOf(run),
    ...((measures || page[madeKey(i)]) && { [madeKey(i)]: measures }),
    [keyOf('at', i)]: set.at === undefined ? (at ?? '0') : String(set.at),
    ...((earlier || page[keyOf('earlier', i)]) && { [keyOf('earlier', i)]: earlier }),
  };
}

/**
 * The page with a mark of a run measured; where it was measured before, and elsewhere,
 * the new measure waits beside that one until the maker has said which is right.
 */
export function withMeasure(
  page: Page,
  i: number,
  run: Run,
  [label, typed]: readonly [string, string],
): Page {
  const { made } = recordOf(page, i, run);
  const before = made.get(label);
  if (before !== undefined && before !== typed) return { ...page, asked: `${label}=${typed}` };
  return withRecord(page, i, run, { made: writeMade(made, label, typed) });
}

/** The page without what was measured on other plans. */
export function withoutRefused(page: Page, i: number, run: Run): Page {
  return { ...withRecord(page, i, run, {}), [keyOf('earlier', i)]: '' };
}

/** Whether a key of a page holds what was followed, not what was typed. */
export function isFollowKey(key: string): boolean {
  return /^(at|made|was|plan|earlier)(-\d+)?$|^(run|asked)$/.test(key);
}

/** Reads `1x8f3k 3=15.6 cm|q2 2=9 cm`: by plan, what was measured of it. */
function readEarlier(text: string): [string, Made][] {
  return text.split('|').flatMap((one) => {
    const cut = one.indexOf(' ');
    const pair: [string, Made] = [one.slice(0, cut), readMade(one.slice(cut + 1))];
    return cut > 0 ? [pair] : [];
  });
}

function writtenMade(made: Made): string {
  return [...made].map((pair) => pair.join('=')).join('; ');
}

/** Beside what is measured now, a page says what was when it was opened from a garment. */
export function wasKey(run: number): PageKey {
  return keyOf('was', run);
}

/** Where a page holds something of a run: the first has no number. */
function keyOf(what: FollowKey, i: number): PageKey {
  return i === 0 ? what : `${what}-${i + 1}`;
}

/** A plan in a few letters: another one where a mark has another label or place. Places are in 1/8000 mm. */
export function planOf({ marks }: Run): string {
  let sum = 0x811c9dc5;
  for (const { label, at, across = 0 } of marks) {
    for (const letter of `${label}:${Math.round(at)}:${Math.round(across)};`) {
      sum = Math.imul(sum ^ letter.charCodeAt(0), 0x01000193);
    }
  }
  return (sum >>> 0).toString(36);
}
