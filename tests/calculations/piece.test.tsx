import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { piece } from '../../src/calculations/piece/piece.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';

afterEach(cleanup);

test('from the finished size to what is cut, with what is checked before', async () => {
  open(piece, {});
  const said = await answer();
  expect(said).toMatch(/^43 × 65.5 cm to cut, wide × long/);
  expect(said).toContain('40 cm + 2 × 1.5 cm = 43 cm.');
  expect(said).toContain('60 cm + 1.5 cm + 4 cm = 65.5 cm.');
  expect(said).toContain('Before you cut: measure what the piece is sewn to');
  expect(said).toContain('Keep the hand that holds the cloth away from the blades');
});

test('on the fold the hand cuts half: what that is, and what it opens to', async () => {
  open(piece, { fold: 'side', count: '2', pairs: 'pairs' });
  const said = await answer();
  expect(said).toMatch(/^21.5 × 65.5 cm to cut/);
  expect(said).toContain('Lay one edge on the fold and cut 21.5 cm from it: opened it is 43 cm.');
  expect(said).toContain('1.5 cm; the fold takes nothing');
  expect(said).toContain('40 cm ÷ 2 + 1.5 cm = 21.5 cm.');
  expect(said).toContain('4: 2 pairs, one of each turned over');
  expect(screen.queryByLabelText(/^The two sides/)).toBeNull();
});

test('what is cut is rounded up on the tape, never down', () => {
  const { headline } = answerTo(piece, { width: '40.01', side: '0', top: '0', bottom: '0' });
  expect(headline).toMatchObject({ before: 'about', number: '40.1 × 60 cm' });
});

describe('what was cut', () => {
  test('gives this, rounded down, and how', async () => {
    open(piece, { given: 'cut', width: '43.05', length: '65.5' });
    const said = await answer();
    expect(said).toMatch(/^about 40 × 60 cm finished, wide × long/);
    expect(said).toContain('65.5 cm − 1.5 cm − 4 cm = 60 cm.');
    expect(said).not.toContain('Before you cut');
  });

  test('lacks: the number that is too little comes first, and what its edges take', async () => {
    open(piece, { given: 'cut', width: '42', length: '65', wantedWidth: '40', wantedLength: '60' });
    const said = await answer();
    expect(said).toMatch(/^1 cm too narrow/);
    expect(said).toContain(
      'It gives 39 cm wide and 59.5 cm long, finished. Wanted 40 cm. Take less',
    );
    expect(said).toContain('0.5 cm too short.');
  });

  test('no wider than its seams: refused in words at the field', () => {
    const work = piece.work({ ...piece.start(benchOf()), given: 'cut', width: '2' }, benchOf());
    expect(work).toMatchObject({ ok: false, faults: [{ field: 'width' }] });
  });
});

test('wider than the cloth: by how much, and ways out', () => {
  const { warnings } = answerTo(piece, { width: '150', cloth: '140' });
  expect(warnings).toEqual([expect.stringMatching(/^Wider than the cloth by 13 cm: turn it/)]);
  expect(answerTo(piece, { width: '137', cloth: '140' }).warnings).toEqual([]);
});

// A drafting textbook of the 1920s: skirt 1 1/2 in at lengthwise seams, 1/2 in at the waist.
test('with nothing at any edge, published allowances are offered, and taken', () => {
  const bench = benchOf({ unit: 'in' });
  const none = { ...piece.start(bench), top: '', bottom: '', side: '' };
  const work = piece.work(none, bench);
  if (!work.ok) throw new Error('no answer');
  expect(work.answer.warnings[0]).toMatch(/^No edge takes anything/);
  expect(work.answer.offers.map(({ words }) => words)).toEqual([
    'Leave a skirt’s for fitting: 1/2 in top, 1 1/2 in sides',
    'Leave a bodice’s for fitting: 1 in top, 1 in sides',
    'Leave a sleeve’s for fitting: 1/4 in top, 1 in sides',
  ]);
  const taken = piece.work(work.answer.offers[0]?.take ?? {}, bench);
  expect(taken).toMatchObject({ answer: { headline: { number: '19 × 24 1/2 in' } } });
  expect(answerTo(piece, {}).offers).toEqual([]);
});

test('slanted sides say where the raw corners are, and that they are marked first', () => {
  const { lines, warnings, workings } = answerTo(piece, { angle: '60', length: '20' });
  expect(lines).toContainEqual({
    label: 'Raw corner, beyond the finished one',
    value: '4.041 cm along the bottom, 5.485 cm along the side',
  });
  expect(warnings).toEqual([expect.stringMatching(/^The sides slant/)]);
  expect(workings[0]?.formula).toContain('(1.5 cm + 4 cm × cos 60°) ÷ sin 60° = 4.041 cm.');
});

test('what shrinks is cut larger, by division', () => {
  const { workings } = answerTo(piece, { shrinksAlong: '3' });
  expect(workings[1]?.formula).toContain('65.5 cm ÷ (1 − 3 %) = 67.526 cm.');
});

test('what each edge adds to is chosen, each with its usual start, only where asked for', async () => {
  const start = piece.start(benchOf());
  const asked = (set: Record<string, string>) =>
    piece.fields({ ...start, ...set }).flatMap(({ key }) => (/.Adds$/.test(key) ? [key] : []));
  expect(asked({})).toEqual([]);
  expect(asked({ adds: 'own' })).toEqual(['topAdds', 'bottomAdds', 'sideAdds']);
  expect(asked({ adds: 'own', sides: 'different' })).toContain('otherAdds');
  expect(start).toMatchObject({ topAdds: 'length', bottomAdds: 'length', sideAdds: 'width' });
  open(piece, { adds: 'own', topAdds: 'none' });
  const said = await answer();
  expect(said).toMatch(/^43 × 64 cm to cut, wide × long/);
  expect(said).toContain('60 cm + 4 cm = 64 cm.');
});

// By hand: 40 + 1.5 + 4 of the bottom + 1.5 of the other side; 60 + 1.5.
test('an edge that adds to the width is in its sum, and twice one side still is', () => {
  const said = answerTo(piece, { adds: 'own', bottomAdds: 'width' }).workings;
  expect(said.map(({ formula }) => formula).slice(0, 2)).toEqual([
    '40 cm + 4 cm + 2 × 1.5 cm = 47 cm.',
    '60 cm + 1.5 cm = 61.5 cm.',
  ]);
});

// By hand: 3 over 4 is 36.87° with cos 4/5: 1.5 takes 1.875. On the fold the side is 20 from it, the raw one 21.5.
test('edges that slant by two measures: asked one after another, what they take, where raw corners are', async () => {
  const start = piece.start(benchOf());
  const asked = (set: Record<string, string>) =>
    piece.fields({ ...start, ...set }).map(({ key }) => key);
  expect(asked({})).not.toContain('topFalls');
  expect(asked({ slants: 'own' })).not.toContain('angle');
  expect(asked({ slants: 'own' })).not.toContain('topOver');
  expect(asked({ slants: 'own', topFalls: '3' })).toContain('topOver');
  expect(asked({ slants: 'angle', topFalls: '3' })).not.toContain('topOver');
  const slants = { slants: 'own', topFalls: '3', topOver: '4', bottom: '0' };
  const said = answerTo(piece, { ...slants, fold: 'side' });
  expect(said.headline).toMatchObject({ number: '21.5 × 61.9 cm' });
  expect(said.workings.map(({ formula }) => formula)).toEqual(
    expect.arrayContaining([
      '1.5 cm ÷ cos 36.869898° = 1.875 cm of the length.',
      '60 cm + 1.875 cm = 61.875 cm.',
    ]),
  );
  expect(said.lines).toContainEqual({
    label: 'Raw corner, top, one side',
    value: '1.5 cm out, 0.75 cm up from the finished one',
  });
  expect(said.lines.filter(({ label }) => label.startsWith('Raw corner'))).toHaveLength(2);
  expect(said.warnings).toEqual([
    expect.stringMatching(/^Edges slant: measure the length along the fold/),
  ]);
  open(piece, { ...slants, topOver: '' });
  expect(await answer()).toContain('Top: over a width of');
});

// Design §34: a slanted edge takes a ÷ cos γ.
test('that top and bottom are level is said, and what one takes that isn’t', () => {
  const said = answerTo(piece, {})
    .workings.map(({ formula }) => formula)
    .join(' ');
  expect(said).toContain('Top and bottom are reckoned level.');
  expect(said).toContain('its allowance ÷ cos of its slant');
  expect(
    answerTo(piece, { length: '' })
      .workings.map(({ formula }) => formula)
      .join(),
  ).not.toContain('level');
});
