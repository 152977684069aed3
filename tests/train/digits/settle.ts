import { sharesOf } from '../../../src/tape/digits/digit-logs.ts';
import {
  freshActivity,
  type Layers,
  NO_DIGIT,
  networkOf,
} from '../../../src/tape/digits/network.ts';
import type { LabelledCell } from './cells.ts';

/**
 * The last layer divided by the temperature at which what it says of cells it wasn't trained on
 * comes true most (Guo and others, 2017), and with the share of rubbish in training taken out, so
 * that scores are log-likelihoods.
 */
export function settled(
  layers: Layers,
  cells: readonly LabelledCell[],
  shareOfRubbish: number,
): { layers: Layers; temperature: number } {
  const activity = freshActivity();
  const run = networkOf(layers, activity);
  const scored = cells.map(({ cell, label }) => {
    run(cell);
    return { scores: activity.scores.slice(), label };
  });
  const loss = (temperature: number) =>
    scored.reduce((sum, { scores, label }) => {
      const shares = sharesOf(scores.map((score) => score / temperature));
      return sum - Math.log(Math.max(1e-12, shares[label] as number));
    }, 0);
  const tried = Array.from({ length: 60 }, (_, i) => 0.3 * 1.05 ** i);
  const temperature = tried.reduce((best, one) => (loss(one) < loss(best) ? one : best));
  const [one, two, three, four, last] = layers;
  const biases = last.biases.map((bias, to) => {
    const prior = to === NO_DIGIT ? shareOfRubbish : (1 - shareOfRubbish) / NO_DIGIT;
    return bias / temperature - Math.log(prior);
  });
  const weights = last.weights.map((weight) => weight / temperature);
  return { layers: [one, two, three, four, { weights, biases }], temperature };
}
