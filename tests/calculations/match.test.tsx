import { cleanup, screen, waitFor } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { matchDrawing } from '../../src/calculations/match/drawing.ts';
import { match } from '../../src/calculations/match/match.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';

afterEach(cleanup);

// 8.11: 1 to 1 1/2 in (textbooks) against none at all (a trade page); shown, not ruled.
test('a sleeve head: what is eased in all and where, how, and the published ranges that conflict', async () => {
  open(match, {});
  const said = await answer();
  expect(said).toMatch(/^1.2 cm to ease in on the sleeve head/);
  expect(said).toContain('Length 1alike');
  expect(said).toContain('Length 20.6 cm to ease, 5 %');
  expect(said).toContain('In all1.2 cm to ease, 2.6 %');
  expect(said).toContain('12 cm + 12.6 cm + 11.6 cm + 11 cm = 47.2 cm.');
  expect(said).toContain('47.2 cm − 46 cm = 1.2 cm in all. 1.2 cm ÷ 46 cm = 2.6 %.');
  expect(said).toContain('Publisheda sleeve head has 1 to 1 1/2');
  expect(said).toContain('none at all is right (a trade page)');
  expect(said).toContain('a single one never meets a double one');
  expect(said).toContain('Pins at the marks come out before the needle reaches them');
});

describe('what is in the way', () => {
  test('more than the cloth takes: which length, by how much, what would mend it', () => {
    const { headline, warnings } = answerTo(match, { cloth: 'firm', parts: '1' });
    expect(headline.after).toBe('too much in length 2');
    // 0.6 − 3 % of 12 is 0.24; − 3 % of 11 is 0.27.
    expect(warnings[0]).toMatch(
      /^Length 2: 0.6 cm to ease is 5 % .*takes about 3 %\. Make the longer edge 0.24 cm shorter/,
    );
    expect(warnings[1]).toMatch(/^Length 3: 0.6 cm to ease is 5.5 % .*0.27 cm shorter/);
    expect(warnings[2]).toMatch(/side seam/);
  });

  test('a head shorter than its armhole is stretched, and that comes before all else', async () => {
    open(match, { other: '11.5; 13; 11.6; 11' });
    const said = await answer();
    expect(said).toMatch(/^0.5 cm missing on the sleeve head in length 1/);
    expect(said).toContain(
      'Length 1: the sleeve head is 0.5 cm shorter than the armhole: it would be stretched, not eased.',
    );
    expect(said).toContain('Length 10.5 cm shorter, 4.3 % to stretch');
    expect(said).toContain('Notch 1 of the sleeve headmove it 0.5 cm towards the end');
    (await screen.findByRole('button', { name: /^Notch the sleeve head anew/ })).click();
    expect(await answer()).toMatch(/^1.1 cm to ease in on the sleeve head/);
    expect(await screen.findByDisplayValue('47.1 cm')).toBeDefined();
  });

  // By hand: half a neckline, back 9 and front 14.5; a facing of 9.3 and 14.2.
  test('a facing whose shoulder seam alone lies elsewhere: where it must go', () => {
    const { headline, warnings, lines } = answerTo(match, {
      use: 'facing',
      here: '9; 14.5',
      other: '9.3; 14.2',
    });
    expect(headline.after).toBe('to move notch 1 of the facing');
    expect(warnings).toEqual([expect.stringMatching(/^In all they fit/)]);
    expect(lines).toContainEqual({
      label: 'Notch 1 of the facing',
      value: 'move it 0.3 cm towards the beginning',
    });
  });

  test('a facing that is longer in all pulls or stands off, by its length', () => {
    const { headline, warnings } = answerTo(match, {
      use: 'facing',
      here: '9; 14.5',
      other: '9.3; 14.5',
    });
    expect(headline.after).toBe('too much in length 1');
    expect(warnings[0]).toBe('Length 1: the facing is 0.3 cm longer: it would pull or stand off.');
    expect(warnings[1]).toMatch(/^Cut the facing again/);
  });

  test('a sleeve gathered onto its cuff is none of it', () => {
    const cuff = { use: 'cuff', here: '20', other: '32' };
    expect(answerTo(match, cuff)).toMatchObject({
      headline: { after: 'to ease in on the sleeve end' },
      warnings: [],
    });
  });

  test('of any two edges either may be the longer', () => {
    const any = { use: 'any', here: '20.4', other: '20' };
    expect(answerTo(match, any)).toMatchObject({
      headline: { after: 'to ease in on this edge' },
      warnings: [],
    });
    expect(answerTo(match, { ...any, here: '20' }).headline.after).toMatch(/^between them/);
  });

  test('shares that jump between neighbours', () => {
    const { warnings } = answerTo(match, { cloth: 'soft', parts: '3', weights: '1; 3; 2' });
    expect(warnings).toEqual([expect.stringMatching(/^Part 2 takes more than twice/)]);
  });

  test('an edge without a length is asked for', () => {
    const work = match.work({ ...match.start(benchOf()), other: '' }, benchOf());
    expect(work).toMatchObject({ ok: false, faults: [{ field: 'other' }] });
  });
});

// By hand: 24.4 + 22.8 = 47.2 on 46: 1.2, 2.6 %. Wool of medium weight takes 6 %.
describe('edges with different numbers of lengths', () => {
  test('what can be told: both totals, the ease in all, which has fewer; marks wait', () => {
    const said = answerTo(match, { other: '24.4; 22.8' });
    expect(said.headline).toMatchObject({ after: 'to ease in on the sleeve head' });
    expect(said.lines.slice(0, 4)).toEqual([
      { label: 'Fullest part, at least', value: '2.6 % of the 6 % the cloth takes' },
      { label: 'All of the armhole', value: '46 cm in 4 lengths' },
      { label: 'All of the sleeve head', value: '47.2 cm in 2 lengths' },
      { label: 'In all', value: '1.2 cm to ease, 2.6 %' },
    ]);
    expect(said.sentence).toBe(
      'Of the sleeve head only 2 lengths are given, of the armhole 4: nothing is shared or marked until it is said which 2 notches of the armhole meet none. Or give as many of both, or all of the sleeve head as one.',
    );
    expect([said.runs, said.warnings]).toEqual([[], []]);
  });

  test('one whole armhole and a head of four lengths, from the page; the head is taken as one', async () => {
    open(match, { here: '46', other: '12; 12.6; 11.6; 11' });
    const said = await answer();
    expect(said).toMatch(/^1.2 cm to ease in on the sleeve head/);
    expect(said).toContain('Of the armhole only 1 length is given, of the sleeve head 4');
    expect(said).toContain('46 cm in 1 length');
    expect(said).toContain('12 cm + 12.6 cm + 11.6 cm + 11 cm = 47.2 cm.');
    expect(said).not.toContain('Length 1');
    (await screen.findByRole('button', { name: /^Take all of the sleeve head as one/ })).click();
    expect(await screen.findByDisplayValue('47.2 cm')).toBeDefined();
    // What stands below the answer is drawn after it.
    await waitFor(async () => expect(await answer()).toContain('Length 11.2 cm to ease, 2.6 %'));
  });

  test('more than the cloth takes in all, or a head too short in all, is in the way', () => {
    // 4 on 46 is 8.7 %; 6 % of 46 is 2.76, so that 1.24 is too much.
    const over = answerTo(match, { other: '25; 25' });
    expect(over.headline.after).toBe('too much in all');
    expect(over.warnings[0]).toBe(
      'In all 4 cm to ease is 8.7 %, the cloth takes about 6 %. Make the longer edge 1.24 cm shorter, or gather it.',
    );
    const short = answerTo(match, { other: '22; 23' });
    expect(short.headline.after).toBe('missing on the sleeve head in all');
    expect(short.warnings[0]).toMatch(/^In all: the sleeve head is 1 cm shorter than the armhole/);
    const facing = answerTo(match, { use: 'facing', here: '9; 14.5', other: '9; 9; 6' });
    expect(facing.warnings[0]).toBe(
      'In all: the facing is 0.5 cm longer: it would pull or stand off.',
    );
  });

  test('notches can be paired by the whole: the head is notched anew', () => {
    const { offers } = answerTo(match, { other: '24.4; 22.8' });
    expect(offers.at(-1)).toMatchObject({
      words: 'Notch the sleeve head anew, as its ease is shared',
      take: { other: '47.2 cm' },
    });
  });
});

// By hand: 12, 12, 11, 11 and 12, 24.4, 10.8; without notch 2 the armhole is 12, 23, 11: 0, 1.4, −0.2; in all 1.2.
describe('four lengths against three: which notch answers which is asked', () => {
  const THREE = { other: '12; 24.4; 10.8' };

  test('each way by what its lengths ease, the likeliest first', () => {
    const { sentence, runs, offers } = answerTo(match, THREE);
    expect(sentence).toContain('until it is said which notch of the armhole meets none');
    expect(runs).toEqual([]);
    expect(offers.map((one) => one.words)).toEqual([
      'Notch 2 of the armhole left over: lengths ease 0 cm, 1.4 cm, −0.2 cm',
      'Notch 3 of the armhole left over: lengths ease 0 cm, 12.4 cm, −11.2 cm',
      'Notch 1 of the armhole left over: lengths ease −12 cm, 13.4 cm, −0.2 cm',
      'Notch the sleeve head anew, as its ease is shared',
    ]);
  });

  test('one press says it, and everything is shared and marked', async () => {
    open(match, THREE);
    (await screen.findByRole('button', { name: /^Notch 2 of the armhole left over/ })).click();
    expect(await screen.findByDisplayValue('2')).toBeDefined();
    await waitFor(async () => expect(await answer()).toContain('Length 21.4 cm to ease, 6.1 %'));
    const said = await answer();
    expect(said).toContain('Notch 2 of the armhole meets none: sew past');
    expect(said).toContain('Length 30.2 cm shorter, 1.9 % to stretch');
    expect(said).toContain('Notch 2 of the armholeleft over, 24 cm from the beginning');
    expect(said).toContain('Marks on the armhole');
  });

  // By hand: shared by length, 35 of 46 takes 0.913 of 1.2, so that notch lies at 35.913 instead of 36.4.
  test('a notch of the edge with more keeps its own number', () => {
    const here = { here: '12; 23; 11', other: '12; 12; 12.4; 10.8', alone: '2', use: 'any' };
    expect(answerTo(match, here).lines).toContainEqual({
      label: 'Notch 3 of the edge it meets',
      value: 'move it 0.487 cm towards the beginning',
    });
  });

  test('turned round, the head’s own left-over notch is counted from its other end', () => {
    const { offers } = answerTo(match, {
      here: '12; 23; 11',
      other: '12; 12; 12.4; 10.8',
      alone: '1',
      otherFrom: 'back',
    });
    expect(offers[0]?.take).toMatchObject({ other: '10.8; 12.4; 12; 12', alone: '3' });
  });

  test('the drawing asks for it where the notches are, and holds what was said', () => {
    const asks = (set: Record<string, string>) =>
      (matchDrawing.draw({ ...match.start(benchOf()), ...set }, benchOf())?.dimensions ?? [])
        .filter(({ by }) => 'given' in by && by.given === 'alone')
        .map(({ text, from, to }) => [text, from.x, to.x]);
    expect(asks(THREE)).toEqual([['say which', 120, 350]]);
    expect(asks({ ...THREE, alone: '2' })).toEqual([['2', 120, 350]]);
    expect(asks({})).toEqual([]);
  });

  test('a notch that isn’t there is a problem of that field', () => {
    const work = match.work({ ...match.start(benchOf()), ...THREE, alone: '4' }, benchOf());
    expect(work).toMatchObject({ ok: false, faults: [{ field: 'alone' }] });
  });
});

test('a head of which only the whole is known: where to notch it, none under the arm', () => {
  const { lines, sentence } = answerTo(match, { other: '47.2' });
  expect(sentence).toContain('Only the whole of the sleeve head is given');
  expect(lines).toContainEqual({
    label: 'Notch 1 of the sleeve head',
    value: '12 cm from the beginning',
  });
});

describe('notches of a sleeve, row 8.13: one on the front, two on the back', () => {
  test('the single and the double one are named on the marks, from where both edges begin', () => {
    const label = 'Notches, armhole and sleeve head';
    expect(answerTo(match, {}).lines).toContainEqual({
      label,
      value: 'mark 2 single, on the front; mark 6 double, on the back',
    });
    const back = answerTo(match, { hereFrom: 'back', otherFrom: 'back', parts: '1' });
    expect(back.lines).toContainEqual({
      label,
      value: 'mark 1 double, on the back; mark 3 single, on the front',
    });
    const labels = (draft: Record<string, string>) =>
      answerTo(match, draft).lines.filter((one) => one.label === label);
    expect(labels({ use: 'any' })).toEqual([]);
    expect(labels({ here: '20; 20', other: '20; 20.5' })).toEqual([]);
  });

  test('edges given from other sides are asked about first, and the head is turned round', () => {
    const { headline, warnings, offers } = answerTo(match, { otherFrom: 'back' });
    expect(headline).toMatchObject({ number: '1 on 2', after: 'notches: front on back' });
    expect(warnings[0]).toMatch(/^The armhole is given front first, the sleeve head back first/);
    const [turn] = offers;
    expect(turn?.words).toBe('Turn the sleeve head round');
    expect(turn?.take).toMatchObject({ other: '11; 11.6; 12.6; 12', otherFrom: 'front' });
    expect(answerTo(match, { otherFrom: 'back', use: 'any' }).warnings).toEqual([]);
  });
});

test('what is checked stands first: the fullest part against what the cloth takes', () => {
  // 0.6 on 11 is 5.45 %; wool of medium weight takes 6.
  expect(answerTo(match, {}).lines[0]).toEqual({
    label: 'Fullest part',
    value: '5.5 % of the 6 % the cloth takes',
  });
});

describe('how they are sewn, by whether they fit', () => {
  const sentence = (draft: Record<string, string>) => answerTo(match, draft).sentence;

  test.each<[string, Record<string, string>, RegExp]>([
    ['a head that is eased in', {}, /sew with the longer edge below\. Marks/],
    ['alike', { use: 'any', here: '20', other: '20' }, /and sew: neither edge is longer\. Marks/],
    [
      'now the one longer, now the other',
      { use: 'any', here: '20; 20', other: '20.5; 19.5' },
      /sew each length with its longer edge below/,
    ],
    [
      'a facing that is to be alike and isn’t',
      { use: 'facing', here: '20', other: '20.5' },
      /^Mend that before it is sewn/,
    ],
    [
      'a facing of which only a notch lies elsewhere',
      { use: 'facing', here: '20; 20', other: '20.5; 19.5' },
      /^Move the notches as listed first/,
    ],
    ['a head too short', { other: '11.5; 13; 11.6; 11' }, /^Mend that before it is sewn/],
  ])('%s', (_, draft, says) => {
    expect(sentence(draft)).toMatch(says);
  });
});
