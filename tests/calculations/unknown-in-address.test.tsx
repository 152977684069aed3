/** What an address holds that no field is, or no choice offers: no answer, and why in words. */
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { readRoute } from '../../src/app/start/route.ts';
import type { Calculation, Draft } from '../../src/calculation/calculation.ts';
import { stateOf } from '../../src/calculation/parted.ts';
import { buttonhole } from '../../src/calculations/buttonhole/buttonhole.ts';
import { centre } from '../../src/calculations/centre/centre.ts';
import { corner } from '../../src/calculations/corner/corner.ts';
import { hem } from '../../src/calculations/hem/hem.ts';
import { parts } from '../../src/calculations/parts/parts.ts';
import { sizes } from '../../src/calculations/sizes/sizes.ts';
import { answer, answerTo, open, workOn } from '../screens/helpers.tsx';

afterEach(cleanup);

const UNKNOWN: readonly [Calculation, Draft, string][] = [
  [corner, { turned: 'thrice' }, 'Turned: “thrice”'],
  [corner, { deep: '4' }, '“deep”'],
  [buttonhole, { holeRule: 'half' }, 'Length by: “half”'],
  [buttonhole, { holeWay: 'slanting' }, 'Lies: “slanting”'],
  [centre, { holes: '9' }, '“holes”'],
  [parts, { into: 'thirds' }, 'Into: “thirds”'],
  [parts, { round: 'half' }, 'The edge: “half”'],
  [sizes, { what: 'pin' }, 'What: “pin”'],
  [sizes, { stitchBy: 'm' }, 'Given as: “m”'],
  [sizes, { what: 'needle', needleBy: 'uk' }, 'Given as: “uk”'],
  [hem, { style: 'thrice' }, 'Turned: “thrice”'],
  [hem, { shape: 'wavy' }, 'The hem line: “wavy”'],
  [hem, { given: 'half' }, 'That is: “half”'],
];

test.each(UNKNOWN)(
  '$id with $1: not answered, and said by name',
  async (calculation, set, said) => {
    const work = workOn(calculation, set);
    expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual([Object.keys(set).at(-1)]);
    open(calculation, set);
    expect(await answer()).toContain(said);
  },
);

test('the tile of a choice that is unknown shows it, not the first choice', async () => {
  open(corner, { turned: 'thrice' });
  const tile = await screen.findByRole('button', { name: /^Turned/ });
  expect(tile.textContent).toBe('Turnedthrice');
});

test('what is no field is left out by one press', async () => {
  open(corner, { deep: '4' });
  expect(await answer()).toContain('“deep” is no field');
  fireEvent.click(await screen.findByRole('button', { name: 'Leave “deep” out' }));
  expect(await answer()).toContain('cm');
  expect(await answer()).not.toContain('deep');
});

// As the first build with hems wrote it, which asked for a mitred corner there, too.
test('a hem of an older build, with fields that are elsewhere now, is answered', () => {
  const older = { depth: '2', turn: '0.7', corner: 'none', side: '1.5', angle: '90' };
  const told = (set: Draft) => {
    const { figures = [], ...said } = answerTo(hem, set);
    return { ...said, drawn: figures.map(({ name, draw }) => [name, draw()]) };
  };
  expect(told(older)).toEqual(told({ depth: '2', turn: '0.7' }));
});

test.each([
  ['depth=2&__proto__=5', '“__proto__” is no field'],
  ['depth=2&depth=4', '“depth ×2” is no field'],
  ['depth=2&Two%20words=4', '“Two words” is no field'],
])(
  'an address with %s isn’t answered, and says which is none of its fields',
  async (query, said) => {
    const { draft } = stateOf(readRoute(`#/hem?${query}`).draft);
    const work = workOn(hem, draft);
    expect(work.ok).toBe(false);
    open(hem, draft);
    expect(await answer()).toContain(said);
    fireEvent.click(await screen.findByRole('button', { name: /^Leave “/ }));
    expect(await answer()).toContain('cm');
    expect(await answer()).not.toContain('is no field');
  },
);
