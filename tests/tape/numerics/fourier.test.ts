import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fft } from '../../../src/tape/numerics/fourier.ts';

/** The definition of the transform, term by term. */
function byDefinition(real: Float64Array, imaginary: Float64Array, k: number): [number, number] {
  let [re, im] = [0, 0];
  for (let n = 0; n < real.length; n++) {
    const angle = (-2 * Math.PI * k * n) / real.length;
    re += real[n]! * Math.cos(angle) - imaginary[n]! * Math.sin(angle);
    im += real[n]! * Math.sin(angle) + imaginary[n]! * Math.cos(angle);
  }
  return [re, im];
}

const sized = fc
  .integer({ min: 0, max: 6 })
  .chain((power) =>
    fc.array(
      fc.tuple(
        fc.double({ min: -9, max: 9, noNaN: true }),
        fc.double({ min: -9, max: 9, noNaN: true }),
      ),
      { minLength: 2 ** power, maxLength: 2 ** power },
    ),
  );

test('equals the sum that defines it, at every frequency', () => {
  fc.assert(
    fc.property(sized, (values) => {
      const real = Float64Array.from(values, ([re]) => re);
      const imaginary = Float64Array.from(values, ([, im]) => im);
      const transformed = [real.slice(), imaginary.slice()] as const;
      fft(...transformed);
      for (let k = 0; k < values.length; k++) {
        const [re, im] = byDefinition(real, imaginary, k);
        expect(transformed[0][k]).toBeCloseTo(re, 9);
        expect(transformed[1][k]).toBeCloseTo(im, 9);
      }
    }),
  );
});

test('what is known to be 0 is left out of the sums, not of the result', () => {
  fc.assert(
    fc.property(sized, fc.integer({ min: 0, max: 3 }), (values, power) => {
      const size = values.length * 2 ** power;
      const parts = [0, 1].map((part) => {
        const padded = new Float64Array(size);
        padded.set(values.map((value) => value[part]!));
        return padded;
      }) as [Float64Array, Float64Array];
      const whole = parts.map((part) => part.slice()) as [Float64Array, Float64Array];
      fft(...parts, values.length);
      fft(...whole);
      expect(parts.map((part) => part.map((value) => value + 0))).toEqual(
        whole.map((part) => part.map((value) => value + 0)),
      );
    }),
  );
});

test('a length that is no power of two is a bug', () => {
  expect(() => fft(new Float64Array(12), new Float64Array(12))).toThrow('12');
  expect(() => fft(new Float64Array(8), new Float64Array(4))).toThrow('4');
});
