import { expect, test } from 'vitest';
import { bodyMeasureWords } from '#words/body/body-measure-words.ts';
import {
  BODY_MEASURES,
  type BodyMeasureId,
  isBodyMeasure,
  TAKEN_AS_READ,
} from '../../../src/sewing/sources/body-measures.ts';

/*
 * Names as the standards have them, each held to the measure that carries it, or to why none does.
 * 8.14: EN 13402-1 as copies of it print it, and from memory. 8.15, 19.8, 19.9, 19.10: ISO 8559:1989
 * as table 4.1 of a textbook on apparel sizing lists them. 19.1, 19.2, 19.3, 19.11: the same, page 52.
 */
type Told = readonly [row: string, name: string, is: BodyMeasureId | { not: string }];

const NO_LENGTH = { not: 'it is a weight, and nothing here is cut by weight' };
const ONE_PATH = { not: 'it is the total crotch length' };

const NAMES: readonly Told[] = [
  ['8.14', 'head', 'head-girth'],
  ['8.14', 'neck', 'neck-girth'],
  ['8.14', 'chest', 'chest-girth'],
  ['8.14', 'bust girth', 'bust-girth'],
  ['8.14', 'body mass', NO_LENGTH],
  ['8.14', 'underbust', 'underbust-girth'],
  ['8.14', 'waist', 'waist-girth'],
  ['8.14', 'hip girth', 'hip-girth'],
  ['8.14', 'height', 'height'],
  ['8.14', 'inside leg', 'inside-leg-length'],
  ['8.14', 'arm length', 'arm-length'],
  ['8.14', 'hand girth', 'hand-girth'],
  ['8.14', 'foot length', 'foot-length'],
  ['8.15', 'under-arm length', 'under-arm-length'],
  ['8.15', 'scye depth', 'scye-depth'],
  ['8.15', 'neck-shoulder point to breast point', 'breast-point-length'],
  ['8.15', 'cervical to breast point', 'cervical-to-breast-point'],
  ['8.15', 'neck-shoulder to waist', 'front-waist-length'],
  ['8.15', 'cervical to waist front', 'cervical-to-waist-front'],
  ['8.15', 'cervical to waist back', 'back-waist-length'],
  ['8.15', 'shoulder length', 'shoulder-length'],
  ['8.15', 'shoulder width', 'shoulder-width'],
  ['8.15', 'back width', 'back-width'],
  ['8.15', 'upper-arm length', 'upper-arm-length'],
  ['8.15', 'seventh cervical to wrist', 'cervical-to-wrist'],
  ['8.15', 'neck-base girth', 'neck-base-girth'],
  ['8.15', 'upper-arm girth', 'upper-arm-girth'],
  ['8.15', 'armscye girth', 'armscye-girth'],
  ['8.15', 'elbow girth', 'elbow-girth'],
  ['19.8', 'trunk length', 'trunk-length'],
  ['19.8', 'body rise', 'body-rise'],
  ['19.8', 'cervical to knee hollow', 'cervical-to-knee-hollow'],
  ['19.8', 'cervical height', 'cervical-height'],
  ['19.8', 'waist height', 'waist-height'],
  ['19.8', 'outside leg length', 'outside-leg-length'],
  ['19.8', 'waist to hips', 'waist-to-hips'],
  ['19.8', 'hip height', 'hip-height'],
  ['19.8', 'crotch', ONE_PATH],
  ['19.8', 'trunk circumference', 'trunk-circumference'],
  ['19.8', 'thigh length', 'thigh-length'],
  ['19.8', 'crotch height', 'inside-leg-length'],
  ['19.8', 'knee height', 'knee-height'],
  ['19.8', 'ankle height', 'ankle-height'],
  ['19.9', 'wrist', 'wrist-girth'],
  ['19.9', 'thigh', 'thigh-girth'],
  ['19.9', 'mid-thigh', 'mid-thigh-girth'],
  ['19.9', 'knee', 'knee-girth'],
  ['19.9', 'lower knee', 'lower-knee-girth'],
  ['19.9', 'calf', 'calf-girth'],
  ['19.9', 'minimum leg', 'minimum-leg-girth'],
  ['19.9', 'ankle', 'ankle-girth'],
  ['19.10', 'hand length', 'hand-length'],
];

test.each(NAMES)('%s: %s', (_, name, is) => {
  if (typeof is !== 'string') {
    expect(is.not).toMatch(/\S/);
    return;
  }
  expect(Object.hasOwn(BODY_MEASURES, is)).toBe(true);
  const { name: said, also } = bodyMeasureWords.measures[is];
  const word = name.split(/[ -]/).at(-1) as string;
  expect(`${said} ${also}`.toLowerCase().replaceAll('-', ' ')).toContain(word);
});

const { measures } = bodyMeasureWords;

test('8.14: the head at its widest above the ears, the neck 2 cm below the Adam’s apple', () => {
  expect(measures['head-girth'].where).toContain('above the ears');
  expect(measures['neck-girth'].where).toContain('2 cm below the Adam’s apple');
});

test('19.1, 19.2, 19.3: two waists, each told from the other, the standard one marked breathing quietly', () => {
  const { 'waist-girth': level, 'natural-waist-girth': natural } = measures;
  expect(level.where).toMatch(/midway between the lowest rib and the top of the hip bone/);
  expect(level.where).toMatch(/on a deep breath, mark and measure breathing quietly/);
  expect(natural.where).toMatch(/a belt settles.*in front, behind and at both sides/);
  expect(level.note).toContain('natural waist');
  expect(natural.note).toContain('level waist of the standard');
  expect(TAKEN_AS_READ.has('waist-girth') && TAKEN_AS_READ.has('natural-waist-girth')).toBe(true);
});

test('19.4, 19.5, 19.6: far fewer than the 93 of the standard; each keeps how it is taken, and who names it so', () => {
  for (const [id, { named }] of Object.entries(BODY_MEASURES)) {
    expect(measures[id as BodyMeasureId].where).toMatch(/\.$/);
    expect(bodyMeasureWords.named[named]).toMatch(/\S/);
  }
  expect(Object.keys(BODY_MEASURES).length).toBeLessThan(93);
});

test('19.11: the level of the armpits is found with a ruler held under the arms', () => {
  expect(measures['scye-depth'].where).toContain('a ruler held under the arms');
});

test('18.9: a pocket opening is to be wider than the hand: its breadth is a measure there is', () => {
  expect(measures['hand-breadth'].note).toContain('pocket opening');
});

test('an id is a measure’s name, and nothing that only reads as one', () => {
  expect(isBodyMeasure('waist-girth')).toBe(true);
  for (const id of ['toString', 'waist', ['waist-girth'], undefined, 0]) {
    expect(isBodyMeasure(id)).toBe(false);
  }
});
