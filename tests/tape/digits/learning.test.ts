import { expect, test } from 'vitest';
import { sharesOf } from '../../../src/tape/digits/digit-logs.ts';
import { freshActivity, type Layer, runNetwork } from '../../../src/tape/digits/network.ts';
import { randomFrom } from '../../tapes/random.ts';
import { cellsOf } from '../../train/digits/figures.ts';
import {
  freshLayers,
  SMOOTHED,
  slopeMaker,
  stepper,
  zeroLayers,
} from '../../train/digits/learning.ts';
import { stroked } from '../../train/digits/letter-masks.ts';
import { trainedRubbish } from '../../train/digits/rubbish.ts';

const cells = (seed: number) =>
  cellsOf(stroked(randomFrom(seed), 4), trainedRubbish, 0.3, 120, seed);

/** Cross-entropy at a cell, against the smoothed label that training aims at. */
function loss(layers: readonly Layer[], { cell, label }: ReturnType<typeof cells>[number]): number {
  const activity = freshActivity();
  runNetwork(layers, cell, activity);
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
  const slopes = zeroLayers();
  slopeMaker()(layers, one, slopes);
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

function learnt(): { layers: Layer[]; before: number; after: number } {
  const layers = freshLayers(randomFrom(1));
  const [all, slopes] = [cells(9), zeroLayers()];
  const [addSlope, step] = [slopeMaker(), stepper(layers)];
  const whole = () => all.reduce((sum, one) => sum + loss(layers, one), 0) / all.length;
  const before = whole();
  for (let round = 0; round < 8; round++) {
    all.forEach((one, i) => {
      addSlope(layers, one, slopes);
      if (i % 20 === 19) step(slopes, 0.003, 20);
    });
  }
  return { layers, before, after: whole() };
}

test('training brings the loss down, and the same seeds give the same weights', () => {
  const [one, other] = [learnt(), learnt()];
  expect(one.after).toBeLessThan(0.7 * one.before);
  expect(one.layers).toEqual(other.layers);
});
