import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { mmPerUnit, type TapeUnit } from '../../src/tape/graduations/tape-unit.ts';
import { readTape } from '../../src/tape/reader/read-tape.ts';
import { readingAt } from '../../src/tape/scales/read-at.ts';
import { scaleByTouch } from '../../src/tape/touch/touch.ts';
import { type nodeEngine, plainEngine } from '../tapes/node-engine.ts';
import { greyOfFile } from '../tapes/photo-file.ts';

interface Mark {
  readonly x: number;
  readonly y: number;
  readonly value: number;
  readonly unit: TapeUnit;
  readonly series: string;
}

export interface Photo {
  readonly file: string;
  /** How near the marks are to their lines, in px of the picture. */
  readonly precision_px?: number;
  readonly marks?: readonly Mark[];
}

/** Wrong by more than this is confidently wrong. */
const WRONG_MM = 1;

/** Reads every photo of a folder with an index of marked lines, and prints what came of it. */
export async function readPhotos(
  folder: string,
  engine: Awaited<ReturnType<typeof nodeEngine>>,
  only = '',
): Promise<void> {
  if (!existsSync(join(folder, 'index.json'))) return console.log(`no photos in ${folder}`);
  const { photos } = JSON.parse(readFileSync(join(folder, 'index.json'), 'utf8')) as {
    photos: Photo[];
  };
  const plain = await plainEngine();
  const ratios: number[] = [];
  const times: number[] = [];
  for (const photo of photos.filter(({ file }) => file.startsWith(only))) {
    const path = join(folder, photo.file);
    const image = await greyOfFile(path);
    const start = performance.now();
    const reading = await readTape(image, engine.readPage);
    const ms = performance.now() - start;
    const plainStart = performance.now();
    if (!only) await plain.recognize(readFileSync(path));
    ratios.push(ms / (performance.now() - plainStart));
    times.push(ms);
    const { marks = [] } = photo;
    const told = marks.map((mark) => ({ mark, told: readingAt(reading, mark) }));
    const errors = told.flatMap(({ mark, told: one }) =>
      one.ok ? [one.mm - mark.value * mmPerUnit[mark.unit]] : [],
    );
    const outside = told.filter(
      ({ mark, told: one }) =>
        one.ok && Math.abs(one.mm - mark.value * mmPerUnit[mark.unit]) > one.uncertaintyMm,
    ).length;
    const wrong = errors.filter((mm) => Math.abs(mm) > WRONG_MM).length;
    const reasons = told.flatMap(({ told: one }) => (one.ok ? [] : [one.reason]));
    console.log(
      `${photo.file.slice(0, 30).padEnd(30)} ${reading.outcome} ${reading.reason ?? ''} ${reading.question?.kind ?? ''} scales ${reading.scales.map((s) => `${s.unit}${s.sure ? '' : `?${s.doubts}`}×${s.numbers.length}`).join(' ')} unread ${reading.unread?.length ?? 0}` +
        ` | ${errors.length}/${marks.length} told, wrong ${wrong}, worst ${Math.max(0, ...errors.map(Math.abs)).toFixed(3)} mm, outside ± ${outside} ${[...new Set(reasons)].join(' ')} | ${ms.toFixed(0)} ms${assisted(image, photo)}`,
    );
  }
  await plain.terminate();
  console.log(
    `reading ÷ plain engine, median ${middle(ratios).toFixed(2)}; median ${middle(times).toFixed(0)} ms`,
  );
}

/** The same photo by touch: the first and last mark of each series as the touches, the rest as the check. */
function assisted(image: Awaited<ReturnType<typeof greyOfFile>>, photo: Photo): string {
  const { marks = [], precision_px: spread } = photo;
  const series = [...new Set(marks.map((mark) => mark.series))];
  const parts = series.map((name) => {
    const own = marks.filter((mark) => mark.series === name);
    const [first, last] = [own[0], own[own.length - 1]];
    if (!first || !last || own.length < 3) return '-';
    const touches = [first, last].map((mark) => (spread ? { ...mark, spread } : mark));
    const found = scaleByTouch(image, touches);
    if (!found.ok) return found.reason;
    const offs = own.map((mark) => {
      const one = readingAt(found.value, mark);
      if (!one.ok) return { off: Number.NaN, within: 0, sure: one.reason };
      const off = Math.abs(one.mm - mark.value * mmPerUnit[mark.unit]);
      return { off, within: one.uncertaintyMm, sure: off <= one.uncertaintyMm + 0.05 ? '' : '!' };
    });
    const worst = Math.max(...offs.map(({ off }) => off));
    const widest = Math.max(...offs.map(({ within }) => within));
    return `${worst.toFixed(2)} (± ${widest.toFixed(2)})${offs.some(({ sure }) => sure) ? '!' : ''}`;
  });
  return parts.length > 0 ? ` | by touch ${parts.join(' ')}` : '';
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}
