import { sharesOf } from '../../../src/tape/digits/digit-logs.ts';
import { byInput, pool } from '../../../src/tape/digits/layers.ts';
import {
  CLASSES,
  type Convolved,
  connectAll,
  EDGES,
  freshActivity,
  type Layer,
  type Layers,
  layersBy,
  layIn,
  TAKEN,
} from '../../../src/tape/digits/network.ts';
import type { Random } from '../../tapes/random.ts';
import { type Kernels, kernels } from './kernels.ts';

/** Weights drawn so that each layer hands on about as much as it takes (He and others, 2015). */
export function freshLayers(random: Random): Layers {
  return layersBy((inputs, outputs) => ({
    weights: Float32Array.from(
      { length: inputs * outputs },
      () => random.normal() * Math.sqrt(2 / inputs),
    ),
    biases: new Float32Array(outputs),
  }));
}

/** Where slopes are added up, or other layers copied to: the same shape. */
export function zeroLayers(): Layers {
  return layersBy((inputs, outputs) => ({
    weights: new Float32Array(inputs * outputs),
    biases: new Float32Array(outputs),
  }));
}

/** So much of a label is spread over all classes, so that no score runs away. */
export const SMOOTHED = 0.02;

/** Adds up the slopes of cross-entropy at cells, walking back through the layers from each. */
export interface Learner {
  /** What was added up. */
  readonly slopes: Layers;
  /** From here on slopes are taken at these weights. */
  use(layers: Layers): void;
  add(cell: Float32Array, label: number): void;
}

export function learner(): Learner {
  const { room, convolve, pushBack } = kernels();
  const [activity, back] = [freshActivity(room), freshActivity(room)];
  const [layers, slopes] = [roomyLayers(room), roomyLayers(room)];
  const [scores, hidden] = [back.scores, back.hidden];
  const turned = TAKEN.map((_, i) => room(layers[i]?.weights.length ?? 0));
  const froms = [activity.cell, activity.convolved[0].pooled, activity.convolved[1].pooled];
  const intos = [room(0), back.convolved[0].pooled, back.convolved[1].pooled];

  const forward = (cell: Float32Array) => {
    layIn(cell, activity);
    TAKEN.forEach((taken, i) => {
      const { biases } = layers[i] as Layer;
      const { planes, pooled, where } = activity.convolved[i] as Convolved;
      convolve(froms[i] as Float32Array, turned[i] as Float32Array, biases, planes, taken);
      pool(planes, { ...taken, count: biases.length }, pooled, where, EDGES[i] as number);
    });
    connectAll(layers, activity);
  };

  /** Back through a pool and the convolution below it: only samples that were picked count. */
  const convolveBack = (i: 0 | 1 | 2) => {
    const { count, width, height } = TAKEN[i];
    const [{ weights, biases }, slope] = [layers[i], slopes[i]];
    const [from, into] = [froms[i] as Float32Array, intos[i] as Float32Array];
    const { where } = activity.convolved[i];
    const above = back.convolved[i].pooled;
    const [outputs, edge] = [biases.length, EDGES[i]];
    into.fill(0);
    let at = 0;
    for (let y = 0; y < height / 2; y++) {
      let higher = ((y + edge) * (width / 2 + 2 * edge) + edge) * outputs;
      for (let x = 0; x < width / 2; x++) {
        for (let to = 0; to < outputs; to++, at++, higher++) {
          const push = above[higher] as number;
          const picked = where[at] as number;
          if (picked < 0 || push === 0) continue;
          slope.biases[to]! += push;
          const place = (picked - to) / outputs;
          const near = (Math.floor(place / width) * (width + 2) + (place % width)) * count;
          const weight = to * count * 9;
          if (i > 0) {
            pushBack(
              from.byteOffset + 4 * near,
              slope.weights.byteOffset + 4 * weight,
              into.byteOffset + 4 * near,
              weights.byteOffset + 4 * weight,
              push,
              count,
              width + 2,
            );
          } else {
            for (let tap = 0; tap < 9; tap++) {
              const off = Math.floor(tap / 3) * (width + 2) + (tap % 3);
              slope.weights[weight + tap]! += push * (from[near + off] as number);
            }
          }
        }
      }
    }
  };

  return {
    slopes,
    use(from) {
      copyLayers(from, layers);
      turned.forEach((weights, i) => {
        const { weights: by, biases } = layers[i] as Layer;
        byInput(by, biases.length, weights);
      });
    },
    add(cell, label) {
      forward(cell);
      sharesOf(activity.scores).forEach((share, i) => {
        scores[i] = share - (i === label ? 1 - SMOOTHED : 0) - SMOOTHED / CLASSES;
      });
      connectBack(activity.hidden, scores, layers[4], slopes[4], hidden);
      for (let i = 0; i < hidden.length; i++) {
        if ((activity.hidden[i] as number) <= 0) hidden[i] = 0;
      }
      const last = activity.convolved[2].pooled;
      connectBack(last, hidden, layers[3], slopes[3], back.convolved[2].pooled);
      convolveBack(2);
      convolveBack(1);
      convolveBack(0);
    },
  };
}

function roomyLayers(room: Kernels['room']): Layers {
  return layersBy((inputs, outputs) => ({
    weights: room(inputs * outputs),
    biases: room(outputs),
  }));
}

function connectBack(
  from: Float32Array,
  above: Float32Array,
  { weights }: Layer,
  slope: Layer,
  into: Float32Array,
): void {
  into.fill(0);
  for (let to = 0; to < above.length; to++) {
    const push = above[to] as number;
    if (push === 0) continue;
    slope.biases[to]! += push;
    const start = to * from.length;
    for (let i = 0; i < from.length; i++) {
      slope.weights[start + i]! += push * (from[i] as number);
      into[i]! += push * (weights[start + i] as number);
    }
  }
}

export function copyLayers(layers: Layers, into: Layers): void {
  layers.forEach(({ weights, biases }, layer) => {
    into[layer]?.weights.set(weights);
    into[layer]?.biases.set(biases);
  });
}

/** Adds slopes to `sum`, and sets them to 0. */
export function takeSlopes(slopes: Layers, sum: Layers): void {
  slopes.forEach((slope, layer) => {
    const into = sum[layer] as Layer;
    for (let i = 0; i < slope.weights.length; i++) into.weights[i]! += slope.weights[i] as number;
    for (let i = 0; i < slope.biases.length; i++) into.biases[i]! += slope.biases[i] as number;
    slope.weights.fill(0);
    slope.biases.fill(0);
  });
}

/** One step against the slopes of a batch (Adam: Kingma and Ba, 2015), which are set to 0. */
export function stepper(layers: Layers) {
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
  return (slopes: Layers, rate: number, batch: number) => {
    steps++;
    layers.forEach(({ weights, biases }, i) => {
      const [slope, m, s] = [slopes[i], mean[i], square[i]] as [Layer, Layer, Layer];
      move(weights, slope.weights, m.weights, s.weights, rate, batch);
      move(biases, slope.biases, m.biases, s.biases, rate, batch);
    });
  };
}
