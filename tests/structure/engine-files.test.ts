import { expect, test } from 'vitest';
import { onlyForDigits } from '../../.ci/traineddata.mjs';

const PARTS = 24;

/** A container of parts at their numbers: a count, an offset each, then the parts. */
function container(parts: Readonly<Record<number, string>>): Buffer {
  const head = Buffer.alloc(4 + 8 * PARTS);
  head.writeInt32LE(PARTS, 0);
  let at = head.length;
  for (let i = 0; i < PARTS; i++) {
    const part = parts[i];
    head.writeBigInt64LE(BigInt(part === undefined ? -1 : at), 4 + 8 * i);
    at += part?.length ?? 0;
  }
  return Buffer.concat([head, Buffer.from(Object.values(parts).join(''))]);
}

const whole = { 0: 'config', 7: 'words', 17: 'net', 18: 'punctuation', 21: 'letters', 22: 'code' };

test('what a row of digits needs is kept, word lists are not', () => {
  const kept = { 0: 'config', 17: 'net', 21: 'letters', 22: 'code' };
  expect(onlyForDigits(container(whole))).toEqual(container(kept));
});

test('what is slim already stays as it is', () => {
  const slim = onlyForDigits(container(whole));
  expect(onlyForDigits(slim)).toEqual(slim);
});

test('data without its net, and what is no such data, are refused', () => {
  expect(() => onlyForDigits(container({ 21: 'letters', 22: 'code' }))).toThrow(/lstm/);
  expect(() => onlyForDigits(Buffer.from('something else'))).toThrow(RangeError);
});
