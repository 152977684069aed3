import fc from 'fast-check';
import { expect, test } from 'vitest';
import { begin } from '../../src/garment/actions/state.ts';
import { type Answer, type Memory, workOut } from '../../src/garment/work-out/work-out.ts';
import { alike, frozen } from './trial/compare.ts';
import { KNOWN } from './trial/known.ts';
import { randomGarment } from './trial/random-garment.ts';
import { secondOpinion, soundFaults } from './trial/second-opinion.ts';

/** In the gate; `npm run laws` tries as many as it is asked to. */
const GARMENTS = { numRuns: 40, seed: 1410 };
const seeds = fc.nat(1_000_000);

test('law 3: the record is unchanged, and a memory of any garment changes no answer', () => {
  let before: Memory | undefined;
  fc.assert(
    fc.property(seeds, (seed) => {
      const record = frozen(randomGarment(seed));
      const text = JSON.stringify(record);
      const answer = workOut(record, KNOWN);
      expect(JSON.stringify(record)).toBe(text);
      expect(alike(workOut(record, KNOWN, before), answer), 'memory of another').toBe(true);
      const again = workOut(structuredClone(record), KNOWN, answer.memory);
      expect(again.evaluated).toBe(0);
      expect(alike(again, answer), 'the same once more').toBe(true);
      before = answer.memory;
    }),
    GARMENTS,
  );
});

test('law 8: without order or memory each number is the same, and on a circle only if it reads itself', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const answer = workOut(randomGarment(seed), KNOWN);
      expect(secondOpinion(answer)).toEqual([]);
      expect(soundFaults(answer)).toEqual([]);
    }),
    GARMENTS,
  );
});

test('no calculation breaks, and enough of what is tried comes to something', () => {
  const kinds = new Map<string, number>();
  const count = (answer: Answer) => {
    for (const result of answer.values.values()) {
      const kind = result.ok ? result.state : result.trouble.kind;
      if (!result.ok && result.trouble.kind === 'broken') throw new Error(result.trouble.message);
      kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
    }
  };
  fc.assert(
    fc.property(seeds, (seed) => count(begin(randomGarment(seed), KNOWN).answer)),
    { ...GARMENTS, numRuns: 100 },
  );
  for (const kind of [
    'planned',
    'partly made',
    'made',
    'made before',
    'circle',
    'waits',
    'impossible',
    'absent',
  ]) {
    expect(kinds.get(kind) ?? 0, kind).toBeGreaterThan(0);
  }
});
