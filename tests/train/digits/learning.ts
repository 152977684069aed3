import { sharesOf } from '../../../src/tape/digits/digit-logs.ts';
import type { Planes } from '../../../src/tape/digits/layers.ts';
import {
  type Activity,
  CLASSES,
  freshActivity,
  HALF,
  type Layer,
  runNetwork,
  SHAPES,
  WHOLE,
} from '../../../src/tape/digits/network.ts';
import type { Random } from '../../tapes/random.ts';
import type { LabelledCell } from './cells.ts';

/** Weights drawn so that each layer hands on about as much as it takes (He and others, 2015). */
export function freshLayers(random: Random): Layer[] {
  return SHAPES.map(([inputs, outputs]) => ({
    weights: Float32Array.from(
      { length: inputs * outputs },
      () => random.normal() * Math.sqrt(2 / inputs),
    ),
    biases: new Float32Array(outputs),
  }));
}

/** Where a cell's slope is added up: the same shape as the layers. */
export function zeroLayers(): Layer[] {
  return SHAPES.map(([inputs, outputs]) => ({
    weights: new Float32Array(inputs * outputs),
    biases: new Float32Array(outputs),
  }));
}

/** So much of a label is spread over all classes, so that no score runs away. */
export const SMOOTHED = 0.02;

/** Adds the slope of cross-entropy at one cell to `slopes`, walking back through the layers. */
export function slopeMaker(): (
  layers: readonly Layer[],
  one: LabelledCell,
  slopes: Layer[],
) => void {
  const activity = freshActivity();
  const back = freshActivity();
  return (layers, { cell, label }, slopes) => {
    runNetwork(layers, cell, activity);
    sharesOf(activity.scores).forEach((share, i) => {
      back.scores[i] = share - (i === label ? 1 - SMOOTHED : 0) - SMOOTHED / CLASSES;
    });
    connectBack(activity.hidden, back.scores, layers[3] as Layer, slopes[3] as Layer, back.hidden);
    back.hidden.forEach((_, i) => {
      if ((activity.hidden[i] as number) <= 0) back.hidden[i] = 0;
    });
    connectBack(
      activity.pooled2,
      back.hidden,
      layers[2] as Layer,
      slopes[2] as Layer,
      back.pooled2,
    );
    convolveBack(
      activity.pooled1,
      HALF,
      activity.where2,
      back.pooled2,
      layers[1] as Layer,
      slopes[1] as Layer,
      back.pooled1,
    );
    convolveBack(
      cell,
      WHOLE,
      activity.where1,
      back.pooled1,
      layers[0] as Layer,
      slopes[0] as Layer,
      null,
    );
  };
}

function connectBack(
  from: Float32Array,
  above: Float32Array,
  { weights }: Layer,
  slope: Layer,
  into: Float32Array,
): void {
  into.fill(0);
  above.forEach((push, to) => {
    if (push === 0) return;
    slope.biases[to]! += push;
    const start = to * from.length;
    for (let i = 0; i < from.length; i++) {
      slope.weights[start + i]! += push * (from[i] as number);
      into[i]! += push * (weights[start + i] as number);
    }
  });
}

/** Back through a pool and the convolution below it: only samples that were picked count. */
function convolveBack(
  from: Float32Array,
  { count, width, height }: Planes,
  picked: Activity['where1'],
  above: Float32Array,
  { weights }: Layer,
  slope: Layer,
  into: Float32Array | null,
): void {
  into?.fill(0);
  const size = width * height;
  for (let i = 0; i < above.length; i++) {
    const [push, at] = [above[i] as number, picked[i] as number];
    if (at < 0 || push === 0) continue;
    const to = Math.floor(at / size);
    const [x, y] = [at % width, Math.floor((at % size) / width)];
    slope.biases[to]! += push;
    for (let dy = Math.max(-1, -y); dy <= Math.min(1, height - 1 - y); dy++) {
      for (let dx = Math.max(-1, -x); dx <= Math.min(1, width - 1 - x); dx++) {
        let weight = to * count * 9 + (dy + 1) * 3 + dx + 1;
        let near = (y + dy) * width + x + dx;
        for (let plane = 0; plane < count; plane++, weight += 9, near += size) {
          slope.weights[weight]! += push * (from[near] as number);
          if (into) into[near]! += push * (weights[weight] as number);
        }
      }
    }
  }
}

/** One step against the slopes of a batch (Adam: Kingma and Ba, 2015), which are set to 0. */
export function stepper(layers: readonly Layer[]) {
  const [mean, square] = [zeroLayers(), zeroLayers()];
  let steps = 0;
  const move = (
    at: Float32Array,
    slope: Float32Array,
    m: Float32Array,
    s: Float32Array,
    rate: number,
    batch: number,
  ) => {
    const sized = (rate * Math.sqrt(1 - 0.999 ** steps)) / (1 - 0.9 ** steps);
    for (let i = 0; i < at.length; i++) {
      const push = (slope[i] as number) / batch;
      m[i] = 0.9 * (m[i] as number) + 0.1 * push;
      s[i] = 0.999 * (s[i] as number) + 0.001 * push * push;
      at[i]! -= (sized * m[i]!) / (Math.sqrt(s[i]!) + 1e-8);
    }
    slope.fill(0);
  };
  return (slopes: readonly Layer[], rate: number, batch: number) => {
    steps++;
    layers.forEach(({ weights, biases }, i) => {
      const [slope, m, s] = [slopes[i], mean[i], square[i]] as [Layer, Layer, Layer];
      move(weights, slope.weights, m.weights, s.weights, rate, batch);
      move(biases, slope.biases, m.biases, s.biases, rate, batch);
    });
  };
}
