/** Of every calculation: an option no choice has, and a field there isn't, are problems of their own key. */
import { expect, test } from 'vitest';
import type { Calculation, Draft } from '../../src/calculation/calculation.ts';
import { benchOf } from '../controls/helpers.ts';
import { choosing, EVERY } from './any-drafts.ts';

const bench = benchOf();
/** What no choice has, nor any object of its own. */
const ODD = ['no-such', 'constructor', '__proto__'];

function faultsAt(calculation: Calculation, draft: Draft): string[] {
  const work = calculation.work(draft, bench);
  return work.ok ? [] : work.faults.map(({ field }) => field);
}

test.each(EVERY)('$id: an option that is unknown is a problem, never the first', (calculation) => {
  for (const [key, { draft }] of choosing(calculation)) {
    for (const odd of ODD) {
      expect(faultsAt(calculation, { ...draft, [key]: odd }), `${key}=${odd}`).toContain(key);
    }
  }
});

test.each(EVERY)('$id: a field that is unknown is a problem', (calculation) => {
  const draft = { ...calculation.start(bench), 'no-such': '3' };
  expect(faultsAt(calculation, draft)).toContain('no-such');
});
