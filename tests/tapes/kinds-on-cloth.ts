import { cloth, phone, roomLight, sensor, sharpLens } from './circumstances.ts';
import type { KindOf } from './kind.ts';
import { tapeAcross } from './tape-across.ts';
import { centimetres, inches, softSurface } from './tape-styles.ts';

/** Soft tapes lying flat on cloth. */
export const onCloth = {
  'cm tape on cloth': {
    about: 'centimetres and millimetres on one edge, seen nearly square on',
    expect: 'read',
    make: (random) => {
      const camera = phone(random, random.between(180, 320), 20);
      const tape = tapeAcross(
        random,
        camera,
        { width: random.between(15, 20), length: 1500 },
        (zero, width) => [
          centimetres(random, { id: 'cm', zero, direction: 1, edge: 'low', last: 150 }, width),
        ],
      );
      return {
        camera,
        ground: cloth(random),
        tapes: [{ ...tape, surface: softSurface(random) }],
        light: roomLight(random),
        lens: sharpLens(random),
        sensor: sensor(random),
        note: 'one scale',
      };
    },
  },
  'inch tape on cloth': {
    about: 'inches in sixteenths on one edge, seen nearly square on',
    expect: 'read',
    make: (random) => {
      const camera = phone(random, random.between(200, 340), 20);
      const tape = tapeAcross(
        random,
        camera,
        { width: random.between(15, 20), length: 1524 },
        (zero, width) => [
          inches(random, { id: 'inch', zero, direction: 1, edge: 'low', last: 60 }, width),
        ],
      );
      return {
        camera,
        ground: cloth(random),
        tapes: [{ ...tape, surface: softSurface(random) }],
        light: roomLight(random),
        lens: sharpLens(random),
        sensor: sensor(random),
        note: 'one scale',
      };
    },
  },
} as const satisfies Record<string, KindOf>;
