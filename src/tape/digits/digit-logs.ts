import { SLIP, SURE } from './limits.ts';
import { CLASSES, freshActivity, networkOf } from './network.ts';
import { unpackLayers } from './packed-layers.ts';
import { WEIGHTS } from './weights.ts';

/** Tells digits apart: from a cell (`digitCell`) to shares, calibrated, or to log-likelihoods. */
export interface DigitReader {
  /** Of eleven, each as likely before the cell was seen; their sum is 1. */
  shares(cell: Float32Array): Float64Array;
}

/** Unpacked once: each look at a picture has a reader of its own. */
const LAYERS = unpackLayers(WEIGHTS);

export function digitReader(): DigitReader {
  const activity = freshActivity();
  const run = networkOf(LAYERS, activity);
  return {
    shares(cell) {
      run(cell);
      return sharesOf(activity.scores);
    },
  };
}

/** Scores are natural logarithms but for a number that all have in common. */
export function sharesOf(scores: Float32Array): Float64Array {
  const most = Math.max(...scores);
  const shares = Float64Array.from(scores, (score) => Math.exp(score - most));
  const sum = shares.reduce((total, share) => total + share, 0);
  return shares.map((share) => share / sum);
}

/**
 * Natural log-likelihoods of what a cell shows, for whoever weighs several cells against each
 * other: bounded below, so that no number is ruled out by one of its digits.
 */
export function digitLogs(shares: Float64Array): Float64Array {
  return shares.map((share) => Math.log((1 - SLIP) * share + SLIP / CLASSES));
}

/** The digit of a cell, or `NO_DIGIT`; null where it is in doubt. */
export function surestDigit(shares: Float64Array): number | null {
  const best = shares.indexOf(Math.max(...shares));
  return (shares[best] as number) >= SURE ? best : null;
}
