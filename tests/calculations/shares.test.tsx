import { cleanup } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { shares } from '../../src/calculations/shares/shares.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';

afterEach(cleanup);

// patternstudio101.com, skirt darts (a teaching page), row 15.2: its own rounding is 1/4 in short.
test('8 in from hip to waist: each edge and dart in whole steps, how, and the published shares', async () => {
  open(shares, { change: '8 in', step: '1/8 in' }, benchOf({ unit: 'in' }));
  const said = await answer();
  expect(said).toMatch(/^1 in on each side seam edge/);
  expect(said).toContain('Each back dart1 3/8');
  expect(said).toContain('rounded one by one its 8 in come out 1/4');
  const { workings } = answerTo(shares, { change: '8 in', step: '1/8 in' });
  expect(workings[0]?.formula).toBe(
    '20.32 cm × 13 % = 2.642 cm. 20.32 cm × 8 % = 1.626 cm. 20.32 cm × 16 % = 3.251 cm. ' +
      '4 × 2.54 cm + 2 × 1.588 cm + 2 × 3.492 cm = 20.32 cm.',
  );
});

describe('what is in the way', () => {
  test('what the number of edges can’t carry is told, with where it may go', () => {
    const four = { frontDarts: '', backDarts: '', sidesShare: '25', change: '1.1' };
    const { lines, warnings } = answerTo(shares, four);
    expect(lines).toContainEqual({ label: 'Left over', value: '0.1 cm more than is wanted' });
    expect(warnings).toEqual([expect.stringMatching(/^0.1 cm too much: give it back/)]);
    expect(answerTo(shares, { ...four, change: '1.3' }).warnings).toEqual([
      expect.stringMatching(/^0.1 cm is left: take it at one place alone/),
    ]);
  });

  test('letting out further than there is allowance', () => {
    const { warnings } = answerTo(shares, { way: 'out', change: '10', allowance: '1' });
    expect(warnings[0]).toBe(
      'Each side seam edge is to move out by 1.3 cm, and 1 cm of allowance is there: too little cloth.',
    );
    expect(warnings[1]).toMatch(/^2.6 cm at one seam is much/);
  });

  test('shares that don’t come to 100, and none at all', async () => {
    open(shares, { sidesShare: '12' });
    expect(await answer()).toContain(
      'all shares, each as often as there are of its kind, come to 96 %; they must make 100',
    );
    cleanup();
    open(shares, { sides: '', frontDarts: '', backDarts: '' });
    expect(await answer()).toContain('nothing takes a share');
  });

  test('a change of less than half a step', () => {
    const { headline, warnings } = answerTo(shares, { change: '0.04' });
    expect(headline.after).toBe('changes anywhere: it is less than half a step');
    expect(warnings).toEqual([expect.stringMatching(/^0.04 cm is left/)]);
  });
});

test('a length is folded or spread at its lines', () => {
  const { sentence, lines } = answerTo(shares, { what: 'length', way: 'out', change: '5' });
  expect(sentence).toMatch(/^Cut along each line, spread it/);
  expect(lines).toContainEqual({ label: 'Each line below', value: '2.5 cm' });
});
