import type { ReadPage } from '../../src/tape/characters/read-page.ts';
import type { GreyImage } from '../../src/tape/picture/grey-image.ts';
import type { Point } from '../../src/tape/picture/place.ts';
import { readTape } from '../../src/tape/reader/read-tape.ts';
import { readingAt } from '../../src/tape/scales/read-at.ts';
import type { TapeReading } from '../../src/tape/scales/tape-reading.ts';

/** What `read-tape` needs: a file's picture, and the character reader. Both may reject. */
export interface ReportParts {
  open: (file: string) => Promise<GreyImage>;
  readPage: ReadPage;
}

/**
 * What is read off a file, at these places, in the form people report a misread in. Never rejects:
 * what went wrong is its reason.
 */
export async function reportOf(file: string, at: readonly Point[], parts: ReportParts) {
  const image = await parts.open(file).catch(wordsOf);
  if (typeof image === 'string') {
    return failed(file, undefined, `not a picture that can be decoded: ${image}`, at);
  }
  const reading = await readTape(image, parts.readPage).catch(wordsOf);
  if (typeof reading === 'string') {
    return failed(file, image, `the reader failed: ${reading}`, at);
  }
  return { failed: false, report: shown(file, reading, at) };
}

const wordsOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

function failed(file: string, image: GreyImage | undefined, reason: string, at: readonly Point[]) {
  const report = {
    file,
    width: image?.width ?? 0,
    height: image?.height ?? 0,
    outcome: 'cannot',
    reason,
    question: null,
    scales: [],
    readings: at.map(({ x, y }) => ({ x, y, reason: 'nothing-read' })),
  };
  return { failed: true, report };
}

function shown(file: string, reading: TapeReading, at: readonly Point[]) {
  const { width, height, outcome, reason, question, scales } = reading;
  return {
    file,
    width,
    height,
    outcome,
    reason: reason ?? null,
    question: question ?? null,
    scales: scales.map(({ unit, numbers }) => ({
      unit,
      numbers: numbers.map(({ value, x, y }) => ({ value, x, y })),
    })),
    readings: at.map(({ x, y }) => {
      const told = readingAt(reading, { x, y });
      if (!told.ok) return { x, y, reason: told.reason };
      const { value, unit, mm, uncertaintyMm } = told;
      return { x, y, value, unit, mm, uncertaintyMm };
    }),
  };
}
