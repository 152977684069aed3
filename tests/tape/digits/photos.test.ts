import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { digitBoxes } from '../../../src/tape/characters/digit-boxes.ts';
import { type NumberPage, placeSymbols } from '../../../src/tape/characters/page.ts';
import type { QuarterTurns } from '../../../src/tape/characters/page-drawing.ts';
import { digitCell } from '../../../src/tape/digits/digit-cell.ts';
import { digitReader, surestDigit } from '../../../src/tape/digits/digit-logs.ts';
import { progression } from '../../../src/tape/numbering/progression.ts';
import type { NumberRead, NumberRow } from '../../../src/tape/numbers/number-row.ts';
import { readTape } from '../../../src/tape/reader/read-tape.ts';
import { nodeEngine } from '../../tapes/node-engine.ts';
import { greyOfFile } from '../../tapes/photo-file.ts';
import { inGate } from '../../thorough.ts';

const FOLDER = process.env.PHOTOS ?? '';
const photos = existsSync(FOLDER)
  ? readdirSync(FOLDER)
      .filter((name) => /\.(jpe?g|png)$/.test(name))
      .sort()
  : [];

/** Of a page's numbers, most of at least three are then among those of the reading: it was upright. */
const UPRIGHT = 0.7;

interface SeenPage {
  readonly page: NumberPage;
  readonly reads: readonly NumberRead[];
  readonly even: readonly NumberRead[];
}

/**
 * The engine misreads, too, and reads upside down: only what rises evenly in the direction it is
 * read counts as read. Few tapes count against that.
 */
function rising(
  reads: readonly NumberRead[],
  row: NumberRow,
  turns: QuarterTurns,
): readonly NumberRead[] {
  const found = progression(reads, row);
  if (!found || (!row.turned && found.perTick > 0 !== (turns === 0))) return [];
  return found.agreeing;
}

/** Numbers of a photo that the whole reading confirmed, with the page that shows them. */
async function confirmed(file: string, engine: Awaited<ReturnType<typeof nodeEngine>>) {
  const seen: SeenPage[] = [];
  const reading = await readTape(await greyOfFile(join(FOLDER, file)), async (grey) => {
    const page = grey as NumberPage;
    const symbols = await engine.readPage(page);
    const rows = placeSymbols(symbols, page, page.turns);
    const reads = [...rows.values()].flat();
    const even = [...rows].flatMap(([row, own]) => rising(own, row, page.turns));
    seen.push({ page, reads, even });
    return symbols;
  });
  const scales = reading.scales.filter(({ sure }) => sure);
  const values = new Set(scales.flatMap(({ numbers }) => numbers.map(({ value }) => value)));
  return seen.flatMap(({ page, reads, even }) => {
    // A number is printed once: of two that were read alike, one was misread.
    const once = ({ value }: NumberRead) => reads.filter((read) => read.value === value).length < 2;
    const held = reads.filter((read) => values.has(read.value) && once(read));
    const upright = reads.length >= 3 && held.length >= UPRIGHT * reads.length;
    if (!upright) return [];
    return held.filter((read) => even.includes(read)).map((read) => ({ page, read }));
  });
}

test.skipIf(photos.length === 0)(
  'digits of photos: what is sure agrees with readings that hold',
  async () => {
    const engine = await nodeEngine();
    const reader = digitReader();
    const sums = { digits: 0, right: 0, answered: 0, wrong: 0 };
    for (const file of inGate(photos, (_, i) => i === 2)) {
      for (const { page, read } of await confirmed(file, engine)) {
        const item = page.items.find(({ cell }) => cell === read.cell);
        const boxes = item ? digitBoxes(item, page.turns) : [];
        // A number whose digits run into one another is no matter of single digits.
        if (boxes.length !== read.text.length) continue;
        boxes.forEach((box, i) => {
          const shares = reader.shares(digitCell(page, box));
          const [sure, is] = [surestDigit(shares), Number(read.text[i])];
          sums.digits++;
          if (shares.indexOf(Math.max(...shares)) === is) sums.right++;
          if (sure === null) return;
          sums.answered++;
          if (sure === is) return;
          sums.wrong++;
          console.log(`${file}: ${read.text}, digit ${i + 1} as ${sure}`);
        });
      }
    }
    await engine.close();
    console.log(`digits of photos: ${JSON.stringify(sums)}`);
    expect(sums.wrong).toBe(0);
  },
  600_000,
);
