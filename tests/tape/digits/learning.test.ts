import { expect, test } from 'vitest';
import { sharesOf } from '../../../src/tape/digits/digit-logs.ts';
import {
  byInput,
  convolve as convolvePlainly,
  edgedSize,
} from '../../../src/tape/digits/layers.ts';
import { freshActivity, type Layers, networkOf } from '../../../src/tape/digits/network.ts';
import { randomFrom } from '../../tapes/random.ts';
import { cellsOf } from '../../train/digits/figures.ts';
import { kernels } from '../../train/digits/kernels.ts';
import { freshLayers, learner, SMOOTHED, stepper } from '../../train/digits/learning.ts';
import { printed, stroked } from '../../train/digits/letter-masks.ts';
import { trainedRubbish } from '../../train/digits/rubbish.ts';

const letters = printed([{ name: 'arimo', licence: 'OFL-1.1', weights: [400] }]);
const cells = (seed: number) => {
  const digits = stroked(randomFrom(seed), 4);
  const source = { digits, letters, rubbish: trainedRubbish, shareOfRubbish: 0.3, varied: 0.5 };
  return cellsOf(source, 40, seed);
};

/** Cross-entropy at a cell, against the smoothed label that training aims at. */
function loss(layers: Layers, { cell, label }: ReturnType<typeof cells>[number]): number {
  const activity = freshActivity();
  const run = networkOf(layers, activity);
  run(cell);
  return sharesOf(activity.scores).reduce((sum, share, i, { length }) => {
    const wanted = (i === label ? 1 - SMOOTHED : 0) + SMOOTHED / length;
    return sum - wanted * Math.log(share);
  }, 0);
}

test('the slope of each layer is that of the loss, taken by differences', () => {
  const random = randomFrom(3);
  const layers = freshLayers(random);
  const one = cells(5)[0];
  if (!one) throw new Error('no cell');
  const { use, add, slopes } = learner();
  use(layers);
  add(one.cell, one.label);
  layers.forEach(({ weights }, layer) => {
    for (let tried = 0; tried < 12; tried++) {
      const at = random.whole(0, weights.length - 1);
      const kept = weights[at] as number;
      const [low, high] = [-1, 1].map((side) => {
        weights[at] = kept + side * 2e-3;
        return loss(layers, one);
      }) as [number, number];
      weights[at] = kept;
      expect(slopes[layer]?.weights[at]).toBeCloseTo((high - low) / 4e-3, 1);
    }
  });
});

test('sums in WebAssembly are those of the plain layers', () => {
  const random = randomFrom(8);
  const taken = { count: 12, width: 8, height: 6 };
  const { room, convolve } = kernels();
  const drawn = (count: number) => {
    const made = room(count);
    for (let i = 0; i < count; i++) made[i] = random.normal();
    return made;
  };
  const [from, weights, biases] = [drawn(edgedSize(taken, 1)), drawn(24 * 108), drawn(24)];
  const [turned, out, plain] = [room(24 * 108), room(24 * 48), new Float32Array(24 * 48)];
  byInput(weights, 24, turned);
  convolve(from, turned, biases, out, taken);
  convolvePlainly(from, taken, turned, biases, plain);
  plain.forEach((value, i) => {
    expect(out[i]).toBeCloseTo(value, 3);
  });
});

function learnt(): { layers: Layers; before: number; after: number } {
  const layers = freshLayers(randomFrom(1));
  const all = cells(9);
  const { use, add, slopes } = learner();
  const step = stepper(layers);
  use(layers);
  const whole = () => all.reduce((sum, one) => sum + loss(layers, one), 0) / all.length;
  const before = whole();
  for (let round = 0; round < 10; round++) {
    all.forEach((one, i) => {
      add(one.cell, one.label);
      if (i % 20 !== 19) return;
      step(slopes, 0.003, 20);
      use(layers);
    });
  }
  return { layers, before, after: whole() };
}

test('training brings the loss down, and the same seeds give the same weights', () => {
  const [one, other] = [learnt(), learnt()];
  expect(one.after).toBeLessThan(0.7 * one.before);
  expect(one.layers).toEqual(other.layers);
});
