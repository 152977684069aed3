import { expect, test } from 'vitest';
import { exactLength, mm } from '../../../src/lengths/length.ts';
import { chosenOf, shorterMove } from '../../../src/sewing/crossing/crossing-move.ts';
import type { Crossing } from '../../../src/sewing/crossing/strip-crossing.ts';

const LAID: Crossing = {
  shift: mm(0),
  pitch: mm(8),
  clashes: 1,
  shared: 0,
  room: mm(4),
  holes: [],
};

// Holes at 0, 8, 16 …: moved on by 5 they stand at 5 and 13, moved back by 3 at −3 and 5 (counted).
test.each([
  [5, { by: mm(3), back: true, other: mm(5) }],
  [3, { by: mm(3), back: false, other: mm(5) }],
  [4, { by: mm(4), back: false, other: mm(4) }],
  [0, { by: mm(0), back: false, other: mm(8) }],
])('a pitch of 8, shifted by %s', (shift, move) => {
  expect(shorterMove({ pitch: mm(8), shift: mm(shift) })).toEqual(move);
});

const laid = (shift: number, clashes: number, room?: number): Crossing => ({
  ...LAID,
  shift: mm(shift),
  clashes,
  room: room === undefined ? undefined : mm(room),
});

// Fewer clashes are always worth a shift; room is from 0.05 mm of shift and more than 0.05 mm of room on.
const CHOICES: [string, Crossing, Crossing, boolean][] = [
  [
    'one clash fewer, however short the way and small the room',
    laid(0, 2, 9),
    laid(0.01, 1, 1),
    true,
  ],
  ['one clash more, with all the room', laid(0, 1, 1), laid(3, 2, 9), false],
  ['as many, more room', laid(0, 1, 4), laid(3, 1, 5), true],
  ['as many, the same room', laid(0, 1, 4), laid(3, 1, 4), false],
  ['as many, less room', laid(0, 1, 4), laid(3, 1, 3), false],
  ['as many, room that nobody sees', laid(0, 1, 4), laid(3, 1, 4.05), false],
  ['as many, room that shows', laid(0, 1, 4), laid(3, 1, 4.06), true],
  ['as many, a way that nobody makes', laid(0, 1, 4), laid(0.04, 1, 5), false],
  ['as many, the least way that is made', laid(0, 1, 4), laid(0.05, 1, 5), true],
  ['no new hole where it was one', laid(0, 0, 4), laid(3, 0), true],
  ['one new hole where there was none', laid(0, 0), laid(3, 0, 4), false],
  ['no new hole either way', laid(0, 0), laid(3, 0), false],
];

test.each(CHOICES)('moved or not: %s', (_, asLaid, best, moved) => {
  expect(chosenOf({ asLaid, best })).toEqual({ chosen: moved ? best : asLaid, moved });
});

test('however it is moved the holes stand on the same places', () => {
  for (let shift = 0; shift < 64_000; shift += 997) {
    const { by, back, other } = shorterMove({ pitch: mm(8), shift: exactLength(shift) });
    expect(by).toBeLessThanOrEqual(other);
    expect((((back ? -by : by) % 64_000) + 64_000) % 64_000).toBe(shift);
  }
});
