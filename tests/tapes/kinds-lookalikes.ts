import { ground, phone } from './circumstances.ts';
import { type InkSheet, printBar, printMask } from './ink-sheet.ts';
import { type KindOf, kind } from './kind.ts';
import { letterings } from './letterings.ts';
import { onBench } from './on-bench.ts';
import { lettered } from './pen.ts';
import type { Random } from './random.ts';
import { rule } from './rules.ts';
import type { SceneSpec } from './scene-spec.ts';
import { noSurface, stiffSurface } from './surfaces.ts';
import type { TapeSpec } from './tape-spec.ts';
import { inventedWord } from './words.ts';

/** Marks in a row straight on the cloth, from one side of the picture to the other. */
function marked(
  random: Random,
  width: number,
  mark: (sheet: InkSheet, s: number, i: number) => void,
  pitch: number,
): (camera: SceneSpec['camera']) => TapeSpec {
  return (camera) => {
    const bare = rule(random, camera, noSurface(random.pick([20, 235])), () => [], {
      length: 900,
      width,
    });
    const decorate = (sheet: InkSheet) => {
      for (let i = 0, s = bare.from; s < bare.to; i++, s += pitch) mark(sheet, s, i);
    };
    return { ...bare, decorate };
  };
}

const rowOf = (
  about: string,
  make: (random: Random) => (camera: SceneSpec['camera']) => TapeSpec,
): KindOf =>
  kind('ask-or-cannot', about, (random) => {
    const camera = phone(random, random.between(110, 260), 20);
    return onBench(random, { camera, tapes: [make(random)(camera)], note: about });
  });

/** Things of the bench that look like graduations. */
export const lookalikes = {
  'cloth only': kind('ask-or-cannot', 'no tape, any cloth', (random) => {
    const camera = phone(random, random.between(120, 300), 25);
    const kinds = ['plain weave', 'twill', 'knit', 'felt', 'check', 'wood', 'stripes'] as const;
    return onBench(random, {
      camera,
      tapes: [],
      ground: ground(random, random.pick(kinds)),
      note: 'cloth',
    });
  }),
  'striped cloth only': kind('ask-or-cannot', 'stripes 1 to 10 mm apart, no tape', (random) => {
    const camera = phone(random, random.between(120, 240), 25);
    const under = {
      ...ground(random, 'stripes'),
      stripe: random.pick([1, 2, 5, 10]),
      thread: 0.35,
    };
    return onBench(random, { camera, tapes: [], ground: under, note: 'stripes' });
  }),
  'zip teeth': rowOf('a zip: two rows of teeth set between each other', (random) => {
    const pitch = random.between(1.5, 3);
    return marked(
      random,
      12,
      (sheet, s, i) => {
        const [from, to] = i % 2 === 0 ? [3, 6.6] : [5.4, 9];
        printBar(sheet, [s, s + pitch * 0.75], [from, to], 0.9);
      },
      pitch,
    );
  }),
  comb: rowOf('a comb: teeth of one length on a back', (random) => {
    const pitch = random.between(1.4, 2.6);
    return marked(
      random,
      30,
      (sheet, s) => {
        printBar(sheet, [s, s + pitch * 0.5], [6, 28], 0.95);
        printBar(sheet, [s, s + pitch], [0, 6], 0.95);
      },
      pitch,
    );
  }),
  'ladder stitches': rowOf('rungs between two rows of stitches', (random) => {
    const pitch = random.between(1.2, 3);
    return marked(
      random,
      10,
      (sheet, s) => {
        printBar(sheet, [s, s + 0.3], [2, 8], 0.8);
        for (const y of [1.7, 8]) printBar(sheet, [s + 0.2, s + pitch * 0.8], [y, y + 0.35], 0.9);
      },
      pitch,
    );
  }),
  'rows of stitches': rowOf('three rows of machine stitches', (random) => {
    const pitch = random.between(1.6, 4);
    return marked(
      random,
      24,
      (sheet, s) => {
        for (const y of [2, 9, 20]) printBar(sheet, [s, s + pitch * 0.72], [y, y + 0.4], 0.85);
      },
      pitch,
    );
  }),
  'labels and numbers': kind(
    'ask-or-cannot',
    'care labels and size numbers, no scale',
    (random) => {
      const camera = phone(random, random.between(120, 220), 20);
      const style = random.pick(letterings);
      const labels = Array.from({ length: random.whole(2, 5) }, () => {
        const lay = { x: random.between(-60, 60), y: random.between(-45, 45) };
        const bare = rule(random, camera, stiffSurface(random), () => [], {
          length: random.between(25, 55),
          width: random.between(12, 24),
          lay,
          margin: 0,
        });
        const words = [inventedWord(random), `${random.whole(32, 58)}`, `${random.whole(1, 99)}`];
        const decorate = (sheet: InkSheet) => {
          words.forEach((word, i) => {
            const mask = lettered(word, style, 2.8 * sheet.perMm);
            printMask(sheet, mask, [(bare.from + bare.to) / 2, 2.5 + 4 * i]);
          });
        };
        return { ...bare, decorate };
      });
      return onBench(random, { camera, tapes: labels, note: 'labels' });
    },
  ),
} as const satisfies Record<string, KindOf>;
