import type { Bench } from '../../src/calculation/bench.ts';
import type { Drawing } from '../../src/calculation/drawing.ts';
import { DRAWINGS } from '../../src/calculations/list.ts';
import type { PaperPage } from '../../src/drawing/paper-job.ts';
import type { SheetJob, SheetSetting } from '../../src/drawing/sheet-job.ts';
import { sheetPages } from '../../src/drawing/sheet-pages.ts';
import { begin } from '../../src/garment/actions/state.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { sheetSaid, sheetWords } from '../../src/screens/garment/sheet/sheet-said.ts';
import { benchOf } from '../controls/helpers.ts';
import { KNOWN } from '../garment/trial/known.ts';

const drawings: ReadonlyMap<string, Drawing> = new Map(
  await Promise.all(
    Object.entries(DRAWINGS).map(async ([id, load]) => [id, (await load()) as Drawing] as const),
  ),
);

/** What is said on the sheet of a garment. */
export function saidOf(garment: Garment, bench: Bench = benchOf()): SheetJob {
  const state = begin(garment, KNOWN);
  return sheetSaid({ state, bench, day: '8 May 2026', bodies: true, drawings });
}

/** Its pages. */
export function sheetOn(
  job: SheetJob,
  setting: Partial<SheetSetting>,
  bench: Bench = benchOf(),
): readonly PaperPage[] {
  const whole = { size: 'a4', margin: 10, long: 'scale', ...setting } as const;
  const outcome = sheetPages(job, whole, sheetWords(bench));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.pages;
}
