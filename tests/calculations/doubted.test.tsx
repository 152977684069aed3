/**
 * Questions about what is unusual. The ranges are common practice without a source, but
 * for button sizes (trade tables: 14 to 60 lines).
 */
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import type { Calculation, Draft } from '../../src/calculation/calculation.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, open, workOn } from '../screens/helpers.tsx';

afterEach(cleanup);

const all = await Promise.all(Object.values(CALCULATIONS).map((load) => load()));
const called = (id: string) => all.find((one) => one.id === id) as Calculation;
const UNITS = ['cm', 'mm', 'in'] as const;

test('nothing a calculation starts with is unusual, on any bench', () => {
  for (const calculation of all) {
    for (const unit of UNITS) {
      expect(workOn(calculation, {}, benchOf({ unit })).odd, calculation.id).toBeUndefined();
    }
  }
});

test.each<[string, Draft, string]>([
  ['hem', { thickness: '3 cm' }, 'thickness'],
  ['closures', { by: 'widest', pitch: '0.1' }, 'pitch'],
  ['closures', { opening: '40 m' }, 'opening'],
  ['buttonhole', { diameter: '70 L' }, 'diameter'],
  ['facing', { seam: '1 m' }, 'seam'],
  ['corner', { angle: '5' }, 'angle'],
  ['pleats', { depth: '40' }, 'depth'],
  ['pleats', { cloth: '9' }, 'cloth'],
  ['seam', { what: 'curve', radius: '2 mm', opening: '0.3 mm' }, 'radius'],
  ['edging', { hole: '0.01' }, 'hole'],
  ['crossing', { upperWidth: '3 m' }, 'upperWidth'],
  ['centre', { count: '1999' }, 'count'],
  ['lacing', { thickness: '8' }, 'thickness'],
  ['sizes', { what: 'stitch', stitch: '25', stitchBy: 'mm' }, 'stitch'],
])('%s with %o asks at the field, answered or not', (id, set, field) => {
  const work = workOn(called(id), set);
  expect(work.odd?.[field]).toMatch(/^at (most|least) .+ is usual: is this right\?$/);
  const label = called(id)
    .fields({ ...called(id).start(benchOf()), ...set })
    .find(({ key }) => key === field)?.label;
  // Read out with the answer; or it is the field that is refused anyhow.
  if (work.ok) expect(work.answer.asked).toContain(`${label}: at `);
  else expect(work.faults[0]?.field).toBe(field);
});

test('the question stands at its tile, is read with its label, and the answer is given', async () => {
  open(called('hem'), { style: 'single', depth: '20', thickness: '2 cm' });
  const said = await answer();
  expect(said).toMatch(/^\d/);
  expect(said).toContain('Cloth thick: at most 0.8 cm is usual. Is this right?');
  expect(said).toContain('common practice, no source');
  const field = screen.getByLabelText(/^Cloth thick.*at most 0\.8 cm is usual: is this right\?$/);
  expect(field.getAttribute('aria-invalid')).toBe('false');
});

test('a field that is asked nothing says nothing', async () => {
  open(called('hem'), { thickness: '3 mm' });
  expect(await answer()).not.toContain('is usual');
  expect(screen.getByLabelText(/^Cloth thick/).closest('label')?.textContent).not.toContain(
    'usual',
  );
});

// 400 m in spaces of 5 cm are 8,000: the opening is to be looked at, not the usual 5 cm.
test('where only a usual field would be blamed, the unusual one is named first', () => {
  const work = workOn(called('closures'), { opening: '400 m', by: 'widest', pitch: '5' });
  expect(work.ok || work.faults.map(({ field }) => field)).toEqual(['opening', 'pitch']);
  const own = workOn(called('closures'), { opening: '46', by: 'widest', pitch: '0.001' });
  expect(own.ok || own.faults.map(({ field }) => field)).toEqual(['pitch']);
});

test.each<[string, Draft]>([
  ['closures', { opening: '5 mm', count: '9', top: '0', bottom: '0' }],
  ['edging', { pitch: '0.6 mm', hole: '0.2 mm' }],
  ['hem', { style: 'unequal', turn: '0.4 mm', depth: '2' }],
  ['crossing', { pitch: '0.6 mm', hole: '0.2 mm', width: '2', upperWidth: '2' }],
])('%s says that the tape is too coarse', (id, set) => {
  const work = workOn(called(id), set);
  expect(work.ok && work.answer.warnings.join()).toContain('Your tape is too coarse here');
});
