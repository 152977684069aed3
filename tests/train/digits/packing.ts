import type { Layer } from '../../../src/tape/digits/network.ts';

/** Layers as text, as `packed-layers.ts` reads them: 127 steps to the greatest weight of an output. */
export function packLayers(layers: readonly Layer[]): string {
  const parts = layers.flatMap(({ weights, biases }) => {
    const inputs = weights.length / biases.length;
    return Array.from(biases, (bias, to) => {
      const own = weights.subarray(to * inputs, (to + 1) * inputs);
      const step = Math.max(1e-9, ...own.map(Math.abs)) / 127;
      const bytes = Buffer.alloc(8 + inputs);
      bytes.writeFloatLE(step, 0);
      bytes.writeFloatLE(bias, 4);
      own.forEach((weight, i) => {
        bytes.writeInt8(Math.round(weight / step), 8 + i);
      });
      return bytes;
    });
  });
  return Buffer.concat(parts).toString('base64');
}
