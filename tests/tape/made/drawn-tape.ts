import type { RowFrame } from '../../../src/tape/frame/frame.ts';
import type { Field } from '../../../src/tape/picture/field.ts';
import { alongRow, centred } from '../../../src/tape/picture/space.ts';
import type { RowPitch } from '../../../src/tape/pitch/pitch-spectrum.ts';
import { graduationAt } from '../../../src/tape/pitch/position.ts';
import { rowFrame, toFrame } from './plain-places.ts';

/** Digits of 5 by 7 squares, each in one piece that doesn't hang together by corners alone. */
export const GLYPHS = [
  '11111 10001 10001 10001 10001 10001 11111',
  '00100 01100 00100 00100 00100 00100 01110',
  '11111 00001 00001 11111 10000 10000 11111',
  '11111 00001 00001 11111 00001 00001 11111',
  '10001 10001 10001 11111 00001 00001 00001',
  '11111 10000 10000 11111 00001 00001 11111',
  '11111 10000 10000 11111 10001 10001 11111',
  '11111 00001 00001 00001 00001 00001 00001',
  '11111 10001 10001 11111 10001 10001 11111',
  '11111 10001 10001 11111 00001 00001 11111',
].map((glyph) => glyph.split(' '));

export interface DrawnNumber {
  readonly text: string;
  /** Its middle along and across the tape, and the height of its digits, in graduations. */
  readonly along: number;
  readonly across: number;
  readonly height: number;
  /** Quarters, clockwise. */
  readonly turns?: number;
}

export interface DrawnTape {
  readonly width: number;
  readonly height: number;
  readonly pitchPx: number;
  readonly angle?: number;
  readonly shear?: number;
  readonly crowding?: number;
  /** How far the line of a graduation runs down from the row, in graduations; 0 for none. */
  readonly lineLength: (tick: number) => number;
  /** Lines run up from the row instead. */
  readonly upwards?: boolean;
  readonly numbers?: readonly DrawnNumber[];
  /** Light print on a dark ground. */
  readonly light?: boolean;
}

const LINE_SHARE = 0.2;
/** Samples a side within one pixel. */
const FINE = 2;

/** The frame and the position model that such a tape is drawn by: the truth. */
export function truthOf(tape: DrawnTape): { frame: RowFrame<never>; pitch: RowPitch } {
  const { width, height, pitchPx, angle = 0, shear = 0, crowding = 0, light } = tape;
  const frame = { ...rowFrame([width / 2, height / 2], angle), shear };
  const model = { a: 1 / pitchPx, b: 0, c: crowding };
  const pitch: RowPitch = {
    model,
    centre: alongRow(0),
    track: [],
    band: [-3, 3],
    smoothing: 0,
    signal: new Float32Array(),
    from: alongRow(0),
    to: alongRow(0),
    ink: light ? -1 : 1,
    score: 1,
  };
  return { frame, pitch };
}

/** A picture of the tape, with a shadow that falls off along it. */
export function drawTape(tape: DrawnTape): Field<never> {
  const { width, height, pitchPx, light } = tape;
  const { frame, pitch } = truthOf(tape);
  const values = new Float32Array(width * height);
  for (let at = 0; at < values.length; at++) {
    let inked = 0;
    for (let part = 0; part < FINE * FINE; part++) {
      const x = (at % width) + ((part % FINE) - (FINE - 1) / 2) / FINE;
      const y = Math.floor(at / width) + (Math.floor(part / FINE) - (FINE - 1) / 2) / FINE;
      const [u, v] = toFrame(frame, x, y);
      if (isInk(tape, graduationAt(pitch.model, centred(u)), v / pitchPx)) inked++;
    }
    const share = inked / FINE ** 2;
    const grey = light ? 40 + 150 * share : 200 - 150 * share;
    values[at] = grey * (1 - (0.4 * (at % width)) / width);
  }
  return { width, height, values };
}

function isInk(tape: DrawnTape, along: number, across: number): boolean {
  const tick = Math.round(along);
  const down = tape.upwards ? -across : across;
  const onLine = Math.abs(along - tick) < LINE_SHARE / 2;
  if (onLine && down >= -1 && down <= tape.lineLength(tick)) return true;
  return (tape.numbers ?? []).some((number) => isDigit(number, along, across));
}

function isDigit(number: DrawnNumber, along: number, across: number): boolean {
  const { text, height, turns = 0 } = number;
  let [x, y] = [along - number.along, across - number.across];
  if (Math.max(Math.abs(x), Math.abs(y)) > text.length * height) return false;
  for (let turn = 0; turn < turns; turn++) [x, y] = [y, -x];
  const square = height / 7;
  const column = Math.floor(x / square + (text.length * 6 - 1) / 2);
  const row = Math.floor(y / square + 3.5);
  return GLYPHS[Number(text[Math.floor(column / 6)])]?.[row]?.[column % 6] === '1';
}

/** Lines of a tape in millimetres: fives longer than ones, tens longest. Common practice, no source. */
export function centimetreLines(tick: number): number {
  if (tick % 10 === 0) return 4;
  return tick % 5 === 0 ? 2.5 : 1;
}

/** Lines of an inch in sixteenths: the inch, halves, quarters, eighths. Common practice, no source. */
export function inchLines(tick: number): number {
  const part = [16, 8, 4, 2, 1].findIndex((one) => tick % one === 0);
  return [6, 3.8, 3, 2.2, 1.4][part]!;
}
