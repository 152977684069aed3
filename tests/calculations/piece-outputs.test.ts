import { describe, expect, test } from 'vitest';
import { pieceOutputs } from '../../src/calculations/piece/outputs.ts';
import { exactLength, mm } from '../../src/lengths/length.ts';
import { givenBy } from './given.ts';

// 40 + 2 × 1.5 and 60 + 1.5 + 4, worked by hand.
test('a piece of 40 × 60 with its seams and hem: what is cut, and what that gives', () => {
  expect(givenBy(pieceOutputs, {})).toEqual({
    'cut-width': 430,
    'cut-length': 655,
    'gives-width': 400,
    'gives-width-all': 400,
    'gives-length': 600,
    'lacks-width': 0,
    'lacks-length': 0,
    across: 430,
    along: 655,
    'corner-bottom': 'absent by angle',
    'corner-side': 'absent by angle',
    count: 1,
  });
});

test('two pairs on the fold: four pieces, the hand cuts half, opened they are whole', () => {
  const found = givenBy(pieceOutputs, { fold: 'side', count: '2', pairs: 'pairs' });
  expect(found).toMatchObject({
    'cut-width': 215,
    'gives-width': 400,
    'gives-width-all': 1600,
    across: 430,
    count: 4,
  });
});

describe('as cut', () => {
  test('the finished size is the cut as made less what its edges take, and the rest lacks', () => {
    const cut = { steps: { 'cut-width': mm(420), 'cut-length': mm(660) } };
    expect(givenBy(pieceOutputs, {}, cut)).toMatchObject({
      'gives-width': 390,
      'lacks-width': 10,
      'gives-length': 605,
      'lacks-length': -5,
      across: 420,
    });
  });

  test('on the fold a slip of 5 mm is 10 in the whole', () => {
    const cut = { steps: { 'cut-width': mm(210) } };
    expect(givenBy(pieceOutputs, { fold: 'side' }, cut)).toMatchObject({
      'gives-width': 390,
      'lacks-width': 10,
      across: 420,
    });
  });

  test('another hem on a piece that is cut gives another length of it', () => {
    const cut = { steps: { 'cut-length': mm(655) } };
    expect(givenBy(pieceOutputs, { bottom: '5' }, cut)).toMatchObject({
      'cut-length': 665,
      'gives-length': 590,
      'lacks-length': 10,
    });
  });

  test('what shrinks gives what is left of it', () => {
    const half = { width: '40', side: '0', shrinksAcross: '50' };
    expect(givenBy(pieceOutputs, half)).toMatchObject({ 'cut-width': 800 });
    const cut = { steps: { 'cut-width': exactLength(mm(790)) } };
    expect(givenBy(pieceOutputs, half, cut)).toMatchObject({ 'gives-width': 395 });
  });
});

describe('what was cut, given as such', () => {
  test('gives its finished size; there is nothing left to cut', () => {
    expect(givenBy(pieceOutputs, { given: 'cut', width: '43', length: '65.5' })).toMatchObject({
      'cut-width': 'absent by given',
      'cut-length': 'absent by given',
      'gives-width': 400,
      'gives-length': 600,
      'lacks-width': 'absent by wantedWidth',
      'lacks-length': 'absent by wantedLength',
      across: 430,
    });
  });

  test('lacks what is wanted more', () => {
    const found = givenBy(pieceOutputs, {
      given: 'cut',
      width: '42',
      length: '66',
      wantedWidth: '40',
      wantedLength: '60',
    });
    expect(found).toMatchObject({ 'lacks-width': 10, 'lacks-length': -5 });
  });
});

test('one way alone', () => {
  expect(givenBy(pieceOutputs, { width: '' })).toMatchObject({
    'cut-width': 'absent by width',
    'gives-width': 'absent by width',
    'lacks-width': 'absent by width',
    across: 'absent by width',
    'cut-length': 655,
  });
});

// By hand: 3 over 4 has cos 4/5, 5 over 12 has 12/13: 1.5 takes 1.875, 4 takes 4.3333, 1.2 takes 1.5.
test('edges that slant by two measures: cut in the middle, and how far it reaches in all', () => {
  const top = { slants: 'own', topFalls: '3', topOver: '4' };
  const set = {
    ...top,
    bottomRises: '-5',
    bottomOver: '12',
    sideLeans: '3',
    sideOver: '4',
    side: '1.2',
  };
  const found = givenBy(pieceOutputs, { ...set, sides: 'different', otherSide: '1', width: '150' });
  expect(found['cut-length']).toBeCloseTo(600 + 18.75 + 43.3333, 3);
  expect(found['cut-width']).toBeCloseTo(1500 + 15 + 10, 3);
  expect(found).toMatchObject({ 'corner-bottom': 'absent by slants' });
  const reach = givenBy(pieceOutputs, { ...top, length: '60', bottom: '0' });
  // The raw side is 1.5 beyond, 21.5 from the middle: 60 + 1.875 + 0.75 × 21.5 there, nothing below.
  expect(reach.along).toBeCloseTo(618.75 + 161.25, 3);
  expect(reach.across).toBeCloseTo(430, 6);
  expect(givenBy(pieceOutputs, { ...top, width: '' })).toMatchObject({ along: 'absent by width' });
  expect(givenBy(pieceOutputs, { ...top, topFalls: '4' })).toMatchObject({
    'cut-length': ['topFalls'],
  });
});

test('what lies at its fold may reach furthest, and a slip of the cut goes with it', () => {
  const set = { slants: 'own', topFalls: '3', topOver: '4', fold: 'side', bottom: '0' };
  expect(givenBy(pieceOutputs, set).along).toBeCloseTo(618.75, 6);
  const cut = { steps: { 'cut-length': mm(600) } };
  expect(givenBy(pieceOutputs, set, cut).along).toBeCloseTo(600, 6);
});

// 1.5 ÷ sin 60° = 1.7321; (1.5 + 4 × 0.5) ÷ sin 60° = 4.0415, (4 + 1.5 × 0.5) ÷ sin 60° = 5.4848.
test('slanted sides: the raw corner, and the widest place, which is below', () => {
  const found = givenBy(pieceOutputs, { angle: '60', length: '20' });
  expect(found['cut-width']).toBeCloseTo(400 + 2 * 17.3205, 3);
  expect(found['corner-bottom']).toBeCloseTo(40.4145, 3);
  expect(found['corner-side']).toBeCloseTo(54.8483, 3);
  expect(found.across).toBeCloseTo(400 + 2 * 40.4145, 3);
  expect(givenBy(pieceOutputs, { angle: '60', length: '' }).across).toBe('absent by length');
  expect(givenBy(pieceOutputs, { angle: '60', length: '60' }).across).toEqual(['length']);
});
