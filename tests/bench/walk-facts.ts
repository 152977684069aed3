import type { Page } from 'playwright-core';
import type { Change } from '../../src/garment/actions/state.ts';
import type { Garment } from '../../src/garment/record/record.ts';

/** All garments on a phone at one moment, by key, with their logs; those that were deleted, too. */
export interface OnDevice {
  garments: Readonly<Record<string, Garment>>;
  logs: Readonly<Record<string, readonly Change[]>>;
  deleted: readonly string[];
}

/** What a phone holds, read in one transaction. */
export function onDevice(page: Page): Promise<OnDevice> {
  return page.evaluate(
    () =>
      new Promise<OnDevice>((done, failed) => {
        const opening = indexedDB.open('thumbrule', 1);
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const store = opening.result.transaction('bench').objectStore('bench');
          const [keys, values] = [store.getAllKeys(), store.getAll()];
          values.onerror = () => failed(values.error);
          values.onsuccess = () => {
            opening.result.close();
            const all = keys.result.map((key, i) => [String(key), values.result[i]] as const);
            const of = (kind: string) =>
              all
                .filter(([key]) => key.startsWith(`${kind}:`))
                .map(([key, value]) => [key.slice(kind.length + 1), value] as const);
            done({
              garments: Object.fromEntries(of('garment')),
              logs: Object.fromEntries(of('log')),
              deleted: of('deleted').map(([id]) => id),
            });
          };
        };
      }),
  );
}

/** What was made, as it was at the last look, and whether the log tells of all that differs at the next. */
export class BookOfFacts {
  #before: OnDevice;

  constructor(first: OnDevice) {
    this.#before = first;
  }

  /** What went or changed without a press that is told. */
  compare(now: OnDevice): string[] {
    const before = this.#before;
    this.#before = now;
    return Object.entries(before.garments).flatMap(([id, garment]) => {
      const after = now.garments[id];
      if (!after) return now.deleted.includes(id) ? [] : [`garment ${id} is gone for good`];
      const told = toldBetween(logOf(before, id), logOf(now, id));
      return Object.keys(garment.facts)
        .filter((key) => JSON.stringify(garment.facts[key]) !== JSON.stringify(after.facts[key]))
        .filter((key) => !told.has(key))
        .map((key) => `fact ${key} of ${id}: nobody changed it`);
    });
  }
}

/** A log is kept under the key of its garment. */
const logOf = ({ logs }: OnDevice, id: string): readonly Change[] => logs[`garment:${id}`] ?? [];

/** The facts that changes name which came, or were taken back, between two logs. */
function toldBetween(one: readonly Change[], two: readonly Change[]): ReadonlySet<string> {
  const [before, after] = [ids(one), ids(two)];
  const moved = [
    ...one.filter(({ id }) => !after.has(id)),
    ...two.filter(({ id }) => !before.has(id)),
  ];
  const slots = moved.flatMap(({ edits }) => edits.map(({ slot }) => slot));
  return new Set(slots.filter(([map]) => map === 'facts').map(([, key]) => String(key)));
}

const ids = (log: readonly Change[]) => new Set(log.map(({ id }) => id));
