import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test, vi } from 'vitest';
import type { PageState } from '../../src/calculation/page.ts';
import { corner } from '../../src/calculations/corner/corner.ts';
import { Follow } from '../../src/controls/follow/follow.tsx';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';

afterEach(cleanup);

test('a corner has its two marks, and is drawn flat and finished with the key of its lines', async () => {
  open(corner, { depth: '4', side: '1.5' });
  const said = await answer();
  expect(said).toMatch(/^3 cm along the bottom.*8 cm up the side/);
  expect(said).toContain('Trim outside the stitching0.635 cm');
  expect(await screen.findByRole('img', { name: 'Corner, flat, wrong side up' })).toBeTruthy();
  expect(await screen.findByRole('img', { name: 'Corner, finished, wrong side up' })).toBeTruthy();
  expect((await screen.findAllByText('cut line')).length).toBeGreaterThan(0);
});

test('each edge’s marks stand under its name, and at a right angle on lines of the tape', async () => {
  open(corner, { depth: '4', side: '1.5' });
  const said = await answer();
  expect(said).toMatch(
    /Along the bottom.*1\.5 cm press.*3 cm mitre.*Up the side.*4 cm press.*8 cm mitre/,
  );
  const names = screen.getAllByRole('heading', { level: 2 }).map(({ textContent }) => textContent);
  expect(names).toEqual(['Along the bottom', 'Up the side']);
  expect(screen.getAllByText('Every mark falls on a line of your tape.')).toHaveLength(2);
});

test('the marks that are laid on each other are called the same in words and on the drawing', () => {
  const { lines, sentence, figures } = answerTo(corner, {});
  expect(lines.map(({ label }) => label)).toContain(
    'Mitre mark A, along the bottom from the raw corner',
  );
  expect(lines.map(({ label }) => label)).toContain(
    'Mitre mark B, up the side from the raw corner',
  );
  expect(sentence).toContain('Lay A and B on each other');
  const labels = figures?.map(({ draw }) =>
    draw().flatMap((shape) => ('label' in shape ? [shape.label] : [])),
  );
  // Numbers are those of all of an edge's marks: the mitre is its second one, or its first.
  expect(labels).toEqual([['A', 'B'], ['A + B']]);
});

test('turned twice, each edge to follow says that its turn is pressed', () => {
  const named = (turned: string) => answerTo(corner, { turned }).runs.map(({ name }) => name);
  expect(named('once')).toEqual(['Along the bottom', 'Up the side']);
  expect(named('twice')).toEqual(['Along the bottom, turn pressed', 'Up the side, turn pressed']);
});

test('followed by voice, a mark says what it is; made elsewhere, each edge keeps its own', async () => {
  const speak = vi.fn();
  const services = { speak, keepAwake: () => () => undefined };
  const bench = benchOf({ voice: 'on' });
  const Followed = () => {
    const draft = { ...corner.start(bench), depth: '4', side: '1.5' };
    const [state, setState] = useState<PageState>({ draft, page: {} });
    const same = { calculation: corner, bench, services, state };
    return (
      <>
        <Follow {...same} onState={setState} onLeave={() => {}} onTape={() => {}} />
        <output>{`${state.page.made ?? '-'} | ${state.page['made-2'] ?? '-'}`}</output>
      </>
    );
  };
  render(<Followed />);
  const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));
  press(/Marked. Next/);
  expect(speak).toHaveBeenLastCalledWith(
    'Line 2, mitre. 3 centimetres. 1.5 centimetres from the last.',
  );
  press('Up the side');
  expect(speak).toHaveBeenLastCalledWith('Line 1, press. 4 centimetres.');
  press('Made elsewhere');
  fireEvent.input(await screen.findByLabelText(/where it really is/), { target: { value: '4.2' } });
  press('Keep this measure');
  expect(screen.getByText('Made at 4.2 cm: 0.2 cm off the plan')).toBeTruthy();
  expect(screen.getByText('- | 1=4.2 cm')).toBeTruthy();
});

test('it is drawn whatever way its angle is typed', () => {
  for (const angle of ['72,5', ' 72.5 ']) {
    const { figures } = answerTo(corner, { angle });
    expect(figures).toHaveLength(2);
    expect(JSON.stringify(figures?.map(({ draw }) => draw()))).not.toContain('null'); // which is how NaN is written
  }
});

test('turned twice, the first turns are pressed before anything is measured', async () => {
  open(corner, { turned: 'twice' });
  expect(await answer()).toContain('Press the first turns before you measure');
});

// Felt of 2 mm turned once: each fold line 0.43 mm nearer the raw edge, each mark 0.86 mm (by hand).
test('thick cloth moves both marks, and the sums are shown', async () => {
  open(corner, { depth: '4', side: '1.5', thickness: '0.2' });
  const said = await answer();
  expect(said).toContain('Mitre mark A, along the bottom from the raw corner2.914 cm');
  expect(said).toContain('1.5 cm − 0.043 cm = 1.457 cm');
  expect(said).toContain('2 × (1.457 cm + 3.957 cm × cos 90°) ÷ sin 90° = 2.914 cm');
});

test('both marks have their formula', () => {
  const { workings } = answerTo(corner, { depth: '4', side: '1.5', angle: '90' });
  const formulas = workings.map(({ formula }) => formula);
  expect(formulas[0]).toContain('2 × (1.5 cm + 4 cm × cos 90°) ÷ sin 90° = 3 cm');
  expect(formulas[1]).toContain('2 × (4 cm + 1.5 cm × cos 90°) ÷ sin 90° = 8 cm');
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  ['no depth', { depth: '0' }, /Depth at the bottom: /],
  ['no such corner', { angle: '3' }, /Angle of the corner: .*20 to 160/],
  ['no such angle', { angle: 'right' }, /Angle of the corner: “right”/],
  ['past the other hem', { angle: '150' }, /Depth at the bottom: 4 cm must be less than 1\.732 cm/],
  ['stitched beyond the hem', { edgeStitch: '2' }, /Stitch in from fold: .*less than 1\.5 cm/],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(corner, set);
  expect(await answer()).toMatch(said);
});
