import { expect, test } from 'vitest';
import { drawnAnswer } from '../../src/calculation/as-made.ts';
import type { Calculation, Draft } from '../../src/calculation/calculation.ts';
import type { Page } from '../../src/calculation/page.ts';
import { edging } from '../../src/calculations/edging/edging.ts';
import { hem } from '../../src/calculations/hem/hem.ts';
import { benchOf } from '../controls/helpers.ts';

const bench = benchOf({ unit: 'mm' });

function drawnOf(calculation: Calculation, set: Draft, page: Page) {
  const draft = { ...calculation.start(bench), ...set };
  const work = calculation.work(draft, bench);
  if (!work.ok) throw new Error(`no answer: ${JSON.stringify(work.faults)}`);
  return { planned: work.answer, made: drawnAnswer(work.answer, page, bench) };
}

/** Where the holes of a drawing are, in mm along it: the middle of each ring. */
function holesIn(figure: readonly object[]): number[] {
  return figure.flatMap((shape) => {
    if (!('ring' in shape && shape.ring && 'points' in shape)) return [];
    const along = (shape.points as { x: number }[]).map(({ x }) => x);
    return [Math.round(((Math.min(...along) + Math.max(...along)) / 2) * 1000) / 1000];
  });
}

test('a hole punched elsewhere is drawn where it is, on the strip as in the list', () => {
  const { planned, made } = drawnOf(edging, {}, { made: '2=14 mm' });
  const [plan] = planned.figures ?? [];
  const [drawn] = made.figures ?? [];
  const marks = planned.runs[0]?.run.marks ?? [];
  expect(holesIn(plan?.draw() ?? [])[1]).toBeCloseTo((marks[1]?.at ?? 0) / 8000, 2);
  expect(holesIn(drawn?.draw() ?? [])[1]).toBe(14);
  expect(holesIn(drawn?.draw() ?? []).filter((at) => at !== 14)).toEqual(
    holesIn(plan?.draw() ?? []).filter((_, i) => i !== 1),
  );
  expect(drawn?.name).toBe(plan?.name);
});

test('a drawing that doesn’t follow what was made is said to be of the plan', () => {
  const { planned, made } = drawnOf(hem, {}, { made: 'A=15 mm' });
  const label = planned.runs[0]?.run.marks[0]?.label ?? '';
  const moved = drawnOf(hem, {}, { made: `${label}=7 mm` }).made;
  expect(moved.figures?.[0]?.name).toBe(`${planned.figures?.[0]?.name}; as planned, not as made`);
  expect(planned.figures?.[0]?.name).not.toMatch(/as planned/);
  expect(made.runs[0]?.run.marks.length).toBe(planned.runs[0]?.run.marks.length);
});

test('where nothing was made elsewhere the answer is the plan’s, as it is', () => {
  const { planned, made } = drawnOf(edging, {}, {});
  expect(made).toBe(planned);
});
