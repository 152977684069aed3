import { type InkSheet, printBar, printMask } from './ink-sheet.ts';
import { lettered, type Mask, turnedMask } from './pen.ts';
import { mmOf, type NumberSpec, type ScaleSpec } from './scale-spec.ts';

/** A tape's width and where it ends, mm. */
export interface Band {
  readonly width: number;
  readonly from: number;
  readonly to: number;
}

/** Prints a scale on its edge of a tape, as far as the sheet reaches. */
export function printScale(sheet: InkSheet, scale: ScaleSpec, tape: Band): void {
  printLines(sheet, scale, tape.width);
  const { numbers, between, subdivisions, numberEvery } = scale;
  if (numbers) printNumbers(sheet, scale, numbers, tape, [numberEvery, 0]);
  if (between) printNumbers(sheet, scale, between, tape, [1 / subdivisions, numberEvery]);
}

/** Where a value lies along the tape, mm. */
function alongTape(scale: ScaleSpec, value: number): number {
  return scale.zero + scale.direction * value * mmOf[scale.unit];
}

/** Turns a distance from the scale's edge into one from the tape's low edge, mm. */
export function fromLowEdge(scale: ScaleSpec, across: number, width: number): number {
  return scale.edge === 'low' ? across : width - across;
}

function printLines(sheet: InkSheet, scale: ScaleSpec, width: number): void {
  const { subdivisions, first, last, finer } = scale;
  const times = finer?.times ?? 1;
  const steps = subdivisions * times;
  const shortest = (scale.lines.at(-1)?.mm ?? 0) * 0.62;
  for (let k = Math.round(first * steps); k <= Math.round(last * steps); k++) {
    const value = k / steps;
    const whole = k % times === 0;
    if (!whole && finer && (value < finer.first || value > finer.last)) continue;
    const line = scale.lines.find(({ every }) => (k / times) % every === 0);
    const long = whole ? (line?.mm ?? 0) : shortest;
    printLine(sheet, scale, alongTape(scale, value) + (scale.jitter?.(k) ?? 0), long, width);
  }
}

function printLine(sheet: InkSheet, scale: ScaleSpec, along: number, mm: number, width: number) {
  const half = scale.stroke / 2;
  const pieces = scale.lean ? Math.ceil(mm * sheet.perMm) : 1;
  for (let piece = 0; piece < pieces; piece++) {
    const ends = [piece, piece + 1].map((at) =>
      fromLowEdge(scale, scale.inset + (mm * at) / pieces, width),
    );
    const x = along + ((scale.lean ?? 0) * mm * (piece + 0.5)) / pieces;
    printBar(sheet, [x - half, x + half], [Math.min(...ends), Math.max(...ends)]);
  }
}

function printNumbers(
  sheet: InkSheet,
  scale: ScaleSpec,
  numbers: NumberSpec,
  tape: Band,
  [every, except]: readonly [number, number],
): void {
  const masks = new Map<string, Mask>();
  for (let n = Math.ceil(scale.first / every - 1e-9); n <= scale.last / every + 1e-9; n++) {
    const value = n * every;
    if (except > 0 && Math.abs(value / except - Math.round(value / except)) < 1e-9) continue;
    const text = numbers.text ? numbers.text(value) : `${Math.round(value)}`;
    const along = alongTape(scale, value);
    const end = sheet.from + sheet.width / sheet.perMm;
    if (text === undefined || along < sheet.from - 20 || along > end + 20) continue;
    const high = Math.round((numbers.heightOf?.(value) ?? numbers.height) * sheet.perMm);
    const mask = cached(masks, `${text} ${high}`, () =>
      turnedMask(lettered(text, numbers.lettering, high), numbers.turned),
    );
    const place = numbers.placeOf?.(value) ?? numbers.place;
    const aside = { before: -1, on: 0, after: 1 }[place] * scale.direction;
    const half = mask.width / sheet.perMm / 2;
    const x = along + aside * (numbers.clear + half);
    // No maker prints half a number on the end of a tape.
    if (x - half < tape.from || x + half > tape.to) continue;
    const y = fromLowEdge(scale, numbers.across, tape.width);
    printMask(sheet, mask, [x, y], numbers.strength?.(value));
  }
}

function cached<V>(map: Map<string, V>, key: string, make: () => V): V {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}
