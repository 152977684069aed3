import { pointsOf } from './bent-line.ts';
import type { Point } from './figure.ts';

/** How a body is looked at. */
export type BodyView = 'front' | 'back' | 'side' | 'side-arm' | 'sitting' | 'span';

/*
 * Lines of a body, drawn for this app: their points in cm of someone 170 cm tall, x from the middle, y down
 * from the top of the head.
 */

/** Half of what is the same on both sides, seen from the front or the back: the other half is its mirror. */
const HALF = [
  // Head, neck, shoulder, the outside of the arm, the hand, back up its inside to the armpit.
  '0 0, 4.8 1.4, 7.4 6, 7.4 12, 5.6 18, 5.2 23, 6.5 27, 13 30, 18.6 32.6, 21 37, 22.6 48, 24.8 61, 27.4 82, 29.4 90, 28 97, 26 95, 25 88, 24.2 82, 20.8 62, 17.6 50, 15.6 45',
  // From the armpit down the body and the outside of the leg, the foot, up the inside of the leg.
  '15.6 45, 15 50, 13.4 57, 12.2 66, 14.6 75, 17 86, 16.4 97, 13.6 112, 12.2 122, 12.6 134, 9.6 152, 8.8 161, 11.8 169, 5 170, 4.2 161, 4 148, 4.2 134, 4.6 122, 3.4 108, 1 89, 0 88',
];

/** Half of someone with both arms stretched out level, down to the waist. */
const SPAN =
  '0 0, 4.8 1.4, 7.4 6, 7.4 12, 5.6 18, 5.2 23, 6.5 27, 13 29.6, 24 31, 48 32, 66 32.6, 76 32, 85 34, 76 36.4, 66 36, 48 36.8, 26 39.6, 17 43, 15 50, 13.4 57, 12.2 66';

const CHIN = '0 23.2, 3 22, 5.6 18';

/** From the side, looking to the right: the head and the front down to the waist. */
const FRONT_OF_SIDE =
  '0 0, 5.4 2, 7.8 8, 9.8 13, 8 15, 7.6 20, 3.6 22.4, 3.6 26.5, 7.2 36, 11.4 46.5, 9.4 54, 8.6 66';

/** The back from the waist up to the head. */
const BACK_OF_SIDE = '-5.6 66, -8.4 52, -9.2 40, -6 29, -5 24, -7.8 16, -8.6 9, -5.4 2, 0 0';

const LEG_OF_SIDE =
  '8.6 66, 10.2 75, 9.4 86, 8.4 100, 6.2 121, 4.6 138, 3.6 158, 9 165, 16.4 168.4, 16 170, -6.4 170, -6.8 166, -4.2 158, -7 136, -4.6 122, -8.4 102, -12.4 88, -10.6 76, -5.6 66';

const SEATED = '8.6 66, 11 75, 22 77, 40 77.5, 46 84, 44 104';

const SEAT_BEHIND = '36 104, 36 94, 28 91.2, -6 91.2, -12 86, -10.6 76, -5.6 66';

const BENT_ARM =
  '2 62.4, 16 66, 23 66, 25 69, 18 70.6, -4 66, -7.6 61, -4.6 44, -3.4 36, -0.6 32.6, 2.8 36, 2.6 46, 1.4 58, 2 62.4';

/** The hard seat. */
const SEAT = '-16 91.6, 34 91.6';

const SIDE = [FRONT_OF_SIDE, LEG_OF_SIDE, BACK_OF_SIDE];

/** The lines of a view. */
export function bodyLines(view: BodyView): Point[][] {
  const lines = VIEWS[view].map(pointsOf);
  if (view !== 'front' && view !== 'back' && view !== 'span') return lines;
  return [...lines, ...lines.map((line) => line.map(({ x, y }) => ({ x: -x, y })))];
}

const VIEWS: Readonly<Record<BodyView, readonly string[]>> = {
  front: [...HALF, CHIN],
  back: HALF,
  span: [SPAN, CHIN],
  side: SIDE,
  'side-arm': [...SIDE, BENT_ARM],
  sitting: [FRONT_OF_SIDE, SEATED, SEAT_BEHIND, BACK_OF_SIDE, SEAT],
};
