import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, length, UNITS_PER_MM } from '../../src/lengths/length.ts';
import {
  inPlaceOrder,
  leastStep,
  placeOrder,
  runAsMade,
  widestStep,
} from '../../src/sewing/made-run.ts';
import { markOut } from '../../src/sewing/marks.ts';
import type { Run } from '../../src/sewing/run.ts';

const CM = 10 * UNITS_PER_MM;
const STEP = length(UNITS_PER_MM);
const at = (cm: number) => exactLength(Math.round(cm * CM));

/** Seven hooks along 46.3 cm, 1.2 and 2.5 cm from the ends: 7.1 cm apart (the invented waistcoat). */
const hooks: Run = {
  datum: 'top-edge',
  length: length(46.3 * CM),
  marks: [1.2, 8.3, 15.4, 22.5, 29.6, 36.7, 43.8].map((cm, i) => ({
    at: at(cm),
    label: String(i + 1),
    kind: 'closure',
  })),
};

// Common practice, no source: a tape laid from the mark that is there shows the space to the next.
test('the step to a mark is taken from where the one before was made', () => {
  const made = runAsMade(hooks, new Map([['2', at(9)]]));
  const { marks, worstError, worstUnevenness } = markOut(made, STEP);
  expect(marks.map((mark) => mark.step / CM)).toEqual([1.2, 7.8, 6.4, 7.1, 7.1, 7.1, 7.1]);
  expect(marks[1]).toMatchObject({ at: at(9), planned: at(8.3), exact: at(8.3) });
  expect(worstError).toBe(at(0.7));
  expect(worstUnevenness).toBe(at(0.7));
});

test('a mark made past the next one is drawn where it lies, and keeps its turn', () => {
  const made = runAsMade(hooks, new Map([['2', at(16)]]));
  expect(made.marks.map(({ label }) => label).join('')).toBe('1234567');
  expect(markOut(made, STEP).marks[2]?.step).toBe(at(-0.6));
  expect(
    inPlaceOrder(made)
      .marks.map(({ label }) => label)
      .join(''),
  ).toBe('1324567');
  expect(placeOrder(made)).toEqual([0, 2, 1, 3, 4, 5, 6]);
  expect(leastStep(made)).toBe(at(0.6));
});

test('a mark made beyond the end makes the run as long as that', () => {
  expect(runAsMade(hooks, new Map([['7', at(47)]])).length).toBe(at(47));
});

test('with nothing made elsewhere it is the very same run', () => {
  expect(runAsMade(hooks, new Map([['9', at(3)]]))).toBe(hooks);
  expect(inPlaceOrder(hooks)).toBe(hooks);
});

test('law: what is made lies where it was measured, and its plan stands beside it', () => {
  const labels = hooks.marks.map(({ label }) => label);
  const places = fc.dictionary(
    fc.constantFrom(...labels),
    fc.integer({ min: 0, max: 50 * CM }).map(exactLength),
    { noNullPrototype: true },
  );
  fc.assert(
    fc.property(places, (record) => {
      const made = new Map(Object.entries(record));
      const run = runAsMade(hooks, made);
      let before = 0;
      for (const [i, mark] of markOut(run, STEP).marks.entries()) {
        const place = made.get(mark.label);
        expect(mark.at).toBe(place ?? hooks.marks[i]?.at);
        expect(mark.planned).toBe(place === undefined ? undefined : hooks.marks[i]?.at);
        expect(mark.step).toBe(mark.at - before);
        before = mark.at;
      }
      const lie = inPlaceOrder(run).marks.map((mark) => mark.at);
      expect(lie).toEqual(run.marks.map((mark) => mark.at).sort((a, b) => a - b));
      expect(placeOrder(run).map((i) => run.marks[i]?.at)).toEqual(lie);
    }),
    { seed: 12 },
  );
});

test('the widest step is told of marks where they lie; one mark alone has none', () => {
  const made = runAsMade(hooks, new Map([['2', at(9)]]));
  expect(widestStep(made, 'count')).toEqual({ ok: true, value: at(7.8) });
  expect(leastStep(made)).toBe(at(6.4));
  const alone = { ...hooks, marks: hooks.marks.slice(0, 1) };
  expect(widestStep(alone, 'count')).toEqual({
    ok: false,
    problems: [{ kind: 'too-few', field: 'count', least: 2, given: 1 }],
  });
  expect(leastStep(alone)).toBeUndefined();
});

test('what is sewn stays where it is, whatever was measured', () => {
  const [first, ...rest] = hooks.marks;
  if (!first) throw new Error('there are seven');
  const sewn: Run = { ...hooks, marks: [{ ...first, kind: 'sewn' }, ...rest] };
  expect(runAsMade(sewn, new Map([['1', at(5)]]))).toBe(sewn);
});

test('marks that lie on one place lie in order', () => {
  const met = runAsMade(hooks, new Map([['2', at(15.4)]]));
  expect(inPlaceOrder(met)).toBe(met);
});
