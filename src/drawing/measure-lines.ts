import type { BodyMeasureId } from '../sewing/sources/body-measures.ts';
import type { BodyView } from './body-outline.ts';

/** Where the tape lies round the body: the middle of the ring, half its width, how far its front hangs, its slope. */
export interface TapeRing {
  at: readonly [x: number, y: number];
  half: number;
  /** Half its height as it is seen; a fifth of its width where it isn't said. */
  high?: number;
  /** Turned by so many degrees. */
  turn?: number;
}

/** The line of the tape for one measure, in the centimetres of the outline. */
export interface TapeLine {
  view: BodyView;
  /** What of the body is shown, from the top down. */
  from: number;
  to: number;
  /** Only what lies right of this, where one arm or leg is all that is wanted. */
  left?: number;
  ring?: TapeRing;
  /** Its points, as `pointsOf` reads them. */
  path?: string;
  /** A level that is found first, or what a ruler shows. */
  level?: string;
}

const round = (
  y: number,
  half: number,
  [from, to]: readonly [number, number],
  view: BodyView = 'front',
): TapeLine => ({ view, from, to, ring: { at: [0, y], half } });

const roundAt = (
  ring: TapeRing,
  [from, to, left]: readonly [number, number, left?: number],
): TapeLine => ({
  ...{ view: 'front', from, to, ring },
  ...(left !== undefined && { left }),
});

const along = (
  view: BodyView,
  path: string,
  [from, to, left]: readonly [number, number, left?: number],
  level?: string,
): TapeLine => ({
  ...{ view, from, to, path },
  ...(left !== undefined && { left }),
  ...(level && { level }),
});

const HEAD = [-3, 40] as const;
const TRUNK = [-3, 94] as const;
const ARM = [28, 100, 9] as const;
const HAND = [70, 100, 18] as const;
const LEGS = [58, 172] as const;
const LEG = [80, 172, -1] as const;
const SHIN = [112, 172, -1] as const;
const FOOT = [146, 173] as const;
const WHOLE = [-3, 173] as const;

/** The line of the tape for each measure. */
export const MEASURE_LINES: Readonly<Record<BodyMeasureId, TapeLine>> = {
  'head-girth': round(7, 7.6, HEAD),
  'neck-girth': round(23.6, 5.3, HEAD),
  'neck-base-girth': round(27.6, 7, HEAD),
  'bust-girth': round(47, 15.4, TRUNK),
  'chest-girth': round(45, 15.7, TRUNK),
  'upper-chest-girth': round(42.4, 15.4, TRUNK),
  'underbust-girth': round(54.5, 14, TRUNK),
  'waist-girth': {
    ...round(66, 12.3, TRUNK),
    level: '15.5 58, 15.5 74',
  },
  'natural-waist-girth': roundAt({ at: [0, 65], half: 12.4, high: 4.4 }, TRUNK),
  'hip-girth': round(86, 17.1, TRUNK),
  'shoulder-girth': { ...round(39, 21.2, TRUNK) },
  'trunk-circumference': along('front', '12 29.6, 8 47, 6 66, 3 82, 0 88', TRUNK),
  'armscye-girth': roundAt({ at: [17.4, 38.8], half: 6.6, high: 2.6, turn: 78 }, ARM),
  'upper-arm-girth': roundAt({ at: [20.2, 49], half: 2.9, turn: -12 }, ARM),
  'elbow-girth': along('side-arm', '-7.6 61.4, -3 60, 1.6 60.4', TRUNK),
  'forearm-girth': along('side-arm', '2.2 62.4, 3.6 66, 2.4 68.6', TRUNK),
  'wrist-girth': roundAt({ at: [25.7, 81.6], half: 1.9, turn: -10 }, HAND),
  'hand-girth': roundAt({ at: [27.2, 89.4], half: 2.4, turn: -10 }, HAND),
  'thigh-girth': roundAt({ at: [8.9, 93], half: 7.8 }, LEG),
  'mid-thigh-girth': roundAt({ at: [8.6, 106], half: 6 }, LEG),
  'lower-thigh-girth': roundAt({ at: [8.2, 116], half: 4.8 }, SHIN),
  'knee-girth': roundAt({ at: [8.4, 122], half: 4 }, SHIN),
  'lower-knee-girth': roundAt({ at: [8.4, 126.5], half: 4 }, SHIN),
  'calf-girth': roundAt({ at: [8.4, 134], half: 4.4 }, SHIN),
  'minimum-leg-girth': roundAt({ at: [6.9, 154], half: 2.7 }, SHIN),
  'ankle-girth': roundAt({ at: [6.5, 160.5], half: 2.5 }, SHIN),
  'heel-girth': {
    ...{ view: 'side', from: FOOT[0], to: FOOT[1] },
    ring: { at: [-0.4, 163.8], half: 7.6, high: 2.2, turn: -34 },
  },
  height: along('side', '14 0, 14 170', WHOLE, '0 0, 16 0'),
  'cervical-height': along('back', '0 27.5, 0 170', WHOLE),
  'waist-height': along('side', '0 66, 0 170', WHOLE),
  'hip-height': along('side', '-0.5 86, -0.5 170', WHOLE, '-12.2 86, 9.4 86'),
  'knee-height': along('side', '6.2 122, 8 126, 8 170', LEGS),
  'ankle-height': along('side', '-1 160.5, -1 170', FOOT),
  'thigh-length': along('front', '0.6 88, 4.6 122', LEGS),
  'inside-leg-length': along('front', '0.6 88, 2 170', LEGS),
  'outside-leg-length': along('side', '0.5 66, -0.5 86, -0.5 170', LEGS),
  'body-rise': along('sitting', '0 66, -1.4 79, -1.4 91.6', [30, 106]),
  'waist-to-hips': along('side', '0.5 66, -0.5 86', TRUNK, '-12.2 86, 9.4 86'),
  'total-crotch-length': along(
    'side',
    '8.6 66, 10.2 75, 8.4 84, 2 90, -5 91, -11 90, -12.4 86, -10.6 76, -5.6 66',
    [30, 110],
  ),
  'trunk-length': along('back', '0 27.5, 0 88', TRUNK, '-17 88, 17 88'),
  'cervical-to-knee-hollow': along('back', '0 27.5, 0 122', WHOLE, '-13 122, 13 122'),
  'back-waist-length': along('back', '0 27.5, 0 66', TRUNK),
  'cervical-to-waist-front': along('front', '0 26.4, 5 25.6, 6.5 27, 7.6 47, 7 55, 6.6 66', TRUNK),
  'front-waist-length': along('front', '6.5 27, 7.6 47, 7 55, 6.6 66', TRUNK),
  'cervical-to-breast-point': along('front', '0 26.4, 5 25.6, 6.5 27, 7.6 47', TRUNK),
  'breast-point-length': along('front', '6.5 27, 7.6 47', TRUNK),
  'scye-depth': along('back', '0 27.5, 0 46', TRUNK, '-17 46, 17 46'),
  'arm-length': along('side-arm', '-0.6 32.6, -3 46, -6.6 61, 4 65, 16 68', TRUNK),
  'upper-arm-length': along('side-arm', '-0.6 32.6, -3 46, -6.6 61', TRUNK),
  'under-arm-length': along('front', '15.6 45, 17.6 50, 20.8 62, 24.2 82', TRUNK),
  'cervical-to-wrist': along(
    'back',
    '0 27.5, 13 30, 18.6 32.6, 21 37, 22.6 48, 24.8 61, 27.4 82',
    TRUNK,
  ),
  'hand-length': along('front', '26 81.8, 27.4 89, 27.2 96.6', HAND),
  'foot-length': along('side', '-6.8 171.5, 16.4 171.5', FOOT),
  'shoulder-length': along('back', '6.5 27, 13 30, 18.6 32.6', TRUNK),
  'shoulder-width': along('back', '-18.6 32.6, 0 27.5, 18.6 32.6', TRUNK),
  'shoulder-breadth': along('back', '-18.6 32.6, 18.6 32.6', TRUNK),
  'back-width': along('back', '-14.6 43, 14.6 43', TRUNK),
  'hand-breadth': along('front', '24.9 89.6, 29.3 89.6', HAND),
  'arm-span': along('span', '-85 34, 85 34', [-3, 66]),
};
