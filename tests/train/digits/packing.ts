import { type Layer, type Layers, layersBy } from '../../../src/tape/digits/network.ts';
import {
  ALPHABET,
  BIAS_MIDDLE,
  BIAS_PARTS,
  LONG,
  MIDDLE,
  STEP_PARTS,
} from '../../../src/tape/digits/packed-layers.ts';

/** Steps to the greatest weight of an output. */
const STEPS = MIDDLE - 1;

/** Layers as text, as `packed-layers.ts` reads them. */
export function packLayers(layers: Layers): string {
  return layers.map(packed).join('');
}

function packed({ weights, biases }: Layer): string {
  const inputs = weights.length / biases.length;
  return Array.from(biases, (bias, to) => {
    const own = weights.subarray(to * inputs, (to + 1) * inputs);
    const parts = stepOf(own);
    const letters = Array.from(own, (weight) => wholeSteps(weight, parts));
    const text = letters.map((whole) => ALPHABET[whole + MIDDLE]).join('');
    return long(parts) + long(Math.round(bias * BIAS_PARTS) + BIAS_MIDDLE) + text;
  }).join('');
}

/** Room for all layers that threads share. */
export function freshBuffer(): SharedArrayBuffer {
  let count = 0;
  layersBy((inputs, outputs) => {
    count += (inputs + 1) * outputs;
    return { weights: new Float32Array(), biases: new Float32Array() };
  });
  return new SharedArrayBuffer(4 * count);
}

/** Layers that lie in such a buffer. */
export function layersOn(buffer: SharedArrayBuffer): Layers {
  let at = 0;
  const next = (count: number) => {
    const part = new Float32Array(buffer, 4 * at, count);
    at += count;
    return part;
  };
  return layersBy((inputs, outputs) => ({
    weights: next(inputs * outputs),
    biases: next(outputs),
  }));
}

/** Layers as they come out of their packing, into `into`. */
export function roundLayers(layers: Layers, into: Layers): void {
  layers.forEach(({ weights, biases }, layer) => {
    const rounded = into[layer] as Layer;
    const inputs = weights.length / biases.length;
    rounded.biases.set(biases);
    for (let to = 0; to < biases.length; to++) {
      const parts = stepOf(weights.subarray(to * inputs, (to + 1) * inputs));
      for (let i = to * inputs; i < (to + 1) * inputs; i++) {
        rounded.weights[i] = (wholeSteps(weights[i] as number, parts) * parts) / STEP_PARTS;
      }
    }
  });
}

/** In parts. */
function stepOf(weights: Float32Array): number {
  let most = 0;
  for (const weight of weights) most = Math.max(most, Math.abs(weight));
  return Math.max(1, Math.round((most / STEPS) * STEP_PARTS));
}

function wholeSteps(weight: number, parts: number): number {
  return Math.min(STEPS, Math.max(-STEPS, Math.round((weight * STEP_PARTS) / parts)));
}

function long(parts: number): string {
  return Array.from({ length: LONG }, (_, i) => {
    return ALPHABET[Math.floor(parts / 64 ** (LONG - 1 - i)) % 64];
  }).join('');
}
