import { readWords } from '#words/common/read-words.ts';
import { paperWords as words } from '#words/paper/paper-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer } from '../../calculation/calculation.ts';
import type { Page } from '../../calculation/page.ts';
import type { PaperDrawing, PaperSize, PaperStrip } from '../../drawing/paper-job.ts';
import { toMm } from '../../lengths/length.ts';
import { readLength } from '../../lengths/read-length.ts';
import { stripsOf } from './strips.ts';

/**
 * What is chosen of the paper, in the page's own keys. Fields are called anything from
 * `length` to `margin` in the same address, so each of these begins with `paper`.
 */
export const PAPER_KEYS = {
  size: 'paper',
  margin: 'paper-margin',
  name: 'paper-name',
  what: 'paper-what',
} as const;

/** Margins most printers can keep to, in mm. */
export const MARGINS = { '5': '5 mm', '10': '10 mm', '15': '15 mm' } as const;

/** A part of the answer that can be put on paper by itself. */
export interface Part {
  value: string;
  label: string;
  strips: readonly PaperStrip[];
  drawings: readonly PaperDrawing[];
}

/** What can go on paper: first all of the marks, then each run and each drawing. */
export function partsOf(answer: Answer | undefined): Part[] {
  const strips = stripsOf(answer?.runs ?? []);
  const drawings = answer?.figures?.map(({ name, draw }) => ({ name, figure: draw() })) ?? [];
  const parts = [
    ...strips.map((strip, i) => part(`run-${i + 1}`, strip.name, [strip], [])),
    ...drawings.map((drawing, i) => part(`drawing-${i + 1}`, drawing.name, [], [drawing])),
  ];
  // One run that is all of the marks is offered once, under its own name.
  if (strips.length === 1) return parts;
  if (strips.length > 0) return [part('', words.allMarks, strips, []), ...parts];
  if (drawings.length === 1) return parts;
  return [part('', words.allDrawings, [], drawings), ...parts];
}

function part(
  value: string,
  label: string,
  strips: readonly PaperStrip[],
  drawings: readonly PaperDrawing[],
): Part {
  return { value, label, strips, drawings };
}

/** The part a page asks for, or the first. */
export function chosenPart(parts: readonly Part[], page: Page): Part | undefined {
  return parts.find(({ value }) => value === page[PAPER_KEYS.what]) ?? parts[0];
}

export function sizeOf(page: Page, { unit }: Bench): PaperSize {
  const asked = page[PAPER_KEYS.size];
  if (asked === 'a4' || asked === 'letter') return asked;
  return unit === 'in' ? 'letter' : 'a4';
}

export function typedMargin(page: Page): string {
  return page[PAPER_KEYS.margin] ?? '10';
}

/** The margin in mm, or what is wrong with it in words. */
export function readMargin(typed: string): number | string {
  const read = readLength(typed, 'mm');
  if (!read.ok) return readWords(words.margin, read.fault);
  return read.value < 0 ? words.negative : toMm(read.value);
}
