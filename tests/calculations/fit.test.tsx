import { cleanup } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { fit } from '../../src/calculations/fit/fit.ts';
import { fitOutputs } from '../../src/calculations/fit/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy, lookUpIn } from './given.ts';

afterEach(cleanup);

const said = (draft: Record<string, string>) => {
  const { headline, lines, warnings } = answerTo(fit, draft);
  const { number, after } = headline;
  const shown = typeof number === 'string' ? number : `${number.whole}${number.decimals ?? ''}`;
  const by = Object.fromEntries(lines.map(({ label, value }) => [label, value]));
  return { first: `${shown} ${after}`, by, warnings };
};

/** An invented coat: a hip of 100, 8 of ease; four pieces of 29 with 1.5 on each of eight edges. */
const coat = { of: 'hip', body: '100', ease: '8', pieces: '4 × 29', allowances: '8 × 1.5' };

test('body and ease are the finished girth, with what is published beside it', async () => {
  open(fit);
  type('Body, all round', '96');
  type('Ease wanted', '5');
  const text = await answer();
  expect(text).toContain('101 cm finished girth');
  expect(text).toContain('96 cm + 5 cm = 101 cm.');
  // Rows 8.1 and 8.5: 1 1/2 to 2, at least 2, at least 2 1/2 in; 5 cm lies between them.
  expect(text).toContain('Sources differ: 3.9 cm to 5.1 cm · at least 5.1 cm · at least 6.4 cm.');
  expect(text).toContain('in at the bust, in woven cloth. a costume course’s text, chapter 16.');
});

describe('the worst is said first', () => {
  test('what pieces give, less their allowances, and what is lacking on each edge', () => {
    const { first, by, warnings } = said({ ...coat, seams: '4' });
    expect(first).toMatch(/^4.* lacking all round$/);
    expect(by).toMatchObject({
      'The pieces give, finished': '104 cm',
      'Finished girth wanted': '108 cm',
      'Ease there is': '4 cm',
      'Against what is wanted': '4 cm is lacking',
      'On each edge of each seam': 'let out 0.5 cm',
    });
    // Row 8.3, 8.5: under 2 in by both.
    expect(warnings.join(' ')).toContain('4 cm of ease is less than any source gives');
  });

  test('smaller than the body goes before what is lacking; cloth that stretches may be', () => {
    const tight = { ...coat, pieces: '4 × 27' };
    expect(said(tight).first).toMatch(/^4.* smaller than the body$/);
    const stretch = said({ ...tight, cloth: 'stretch', ease: '-4' });
    expect(stretch.first).toMatch(/of ease there is$/);
    expect(stretch.by['Ease published for this']).toBe('little or none: it stretches');
    expect(stretch.warnings).toEqual([
      'It is 4 cm smaller than the body, and has to stretch by that.',
    ]);
  });

  test('wide enough, the ease that there is', () => {
    const { first, by, warnings } = said({ ...coat, pieces: '4 × 31' });
    expect(first).toMatch(/^12.* of ease there is$/);
    expect(by['Against what is wanted']).toBe('4 cm is over');
    expect(warnings).toEqual([]);
  });
});

// Design §31: each of n seams' edges 1/2n; worked by hand.
test('a change of seams and darts, and what each would take up', () => {
  const { by } = said({ ...coat, seams: '4', edge: '0.25', darts: '2', dart: '1' });
  expect(by).toMatchObject({
    'Seams and darts change it by': '4 cm wider',
    'Against what is wanted': 'just as wanted',
  });
  const { by: before } = said({ ...coat, darts: '2' });
  expect(before['In each dart']).toBe('take up 2 cm less');
});

test('outputs: girths, ease, what is lacking and its shares; by what was measured once it is sewn', () => {
  const draft = { ...coat, seams: '4', darts: '2' };
  expect(givenBy(fitOutputs, draft)).toEqual({
    ...{ wanted: 1080, change: 'absent by edge', girth: 1040 },
    ...{ ease: 40, lacks: 40, 'each-edge': 5, 'each-dart': 20 },
  });
  const made = { steps: { girth: mm(1060) } };
  expect(givenBy(fitOutputs, draft, made)).toMatchObject({
    ...{ girth: 1040, ease: 60, lacks: 20, 'each-edge': 2.5, 'each-dart': 10 },
  });
  expect(lookUpIn(fitOutputs)({ body: '36 in', ease: '2 in' }).inches('wanted')).toEqual([38]);
});

test('without pieces there is only what is wanted: pieces may take it, and give it back', () => {
  expect(givenBy(fitOutputs, { body: '90', ease: '6' })).toMatchObject({
    wanted: 960,
    girth: 'absent by pieces',
    'each-edge': 'absent by pieces',
  });
  const wanted = fitOutputs.outputs.find(({ key }) => key === 'wanted');
  expect(wanted?.reads).toEqual(['body', 'ease']);
});

test('what is wrong names its field', () => {
  const faults = (draft: Record<string, string>) => {
    const work = workOn(fit, draft);
    return work.ok ? [] : work.faults.map(({ field }) => field);
  };
  expect(faults({ body: '0' })).toEqual(['body']);
  expect(faults({ ...coat, allowances: '120' })).toEqual(['pieces']);
  expect(faults({ ...coat, seams: '0' })).toEqual(['seams']);
});
