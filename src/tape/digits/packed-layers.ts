import { type Layers, layersBy } from './network.ts';

/** A letter stands for a whole number from 0 to 63; a weight is one letter, less `MIDDLE`. */
export const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
export const MIDDLE = 32;
/** Letters of a step or a bias, highest first, and what they are parts of. */
export const LONG = 4;
export const STEP_PARTS = 2 ** 24;
export const BIAS_PARTS = 2 ** 16;
/** A bias is above or below 0 by as many letters' worth. */
export const BIAS_MIDDLE = 2 ** 23;

/** Layers packed as letters: for each output the step of its weights, its bias, and its weights in steps. */
export function unpackLayers(packed: string): Layers {
  let at = 0;
  const next = () => ALPHABET.indexOf(packed[at++] as string);
  const long = () => {
    let sum = 0;
    for (let i = 0; i < LONG; i++) sum = 64 * sum + next();
    return sum;
  };
  return layersBy((inputs, outputs) => {
    const weights = new Float32Array(inputs * outputs);
    const biases = new Float32Array(outputs);
    for (let to = 0; to < outputs; to++) {
      const step = long() / STEP_PARTS;
      biases[to] = (long() - BIAS_MIDDLE) / BIAS_PARTS;
      for (let i = 0; i < inputs; i++) weights[to * inputs + i] = step * (next() - MIDDLE);
    }
    return { weights, biases };
  });
}
