import { hemWords as words } from '#words/calculations/hem-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import {
  all,
  choice,
  either,
  given,
  length,
  lengthOrNone,
  maybeLength,
  not,
  number,
} from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

/** A mitred corner was asked for here once; it is a calculation of its own. */
const PAST = ['corner', 'side', 'angle'];

const measured = choice(words.given);
const style = choice(words.style, { start: 'unequal' });
const shape = choice(words.shape);
const finished = maybeLength(turned.notGiven, { usual: 'garmentLength' });
const taper = choice(words.taper);

/** Whether the measure is of all there is to turn up. */
export const isWhole = measured.is('all');

/** Whether the first turn has a measure of its own. */
export const hasTurn = style.is('unequal', 'narrow');

/** Whether it is to be a narrow one. */
export const isNarrow = style.is('narrow');

const byReadings = shape.is('readings');
const byRise = shape.is('rise', 'inward');
const hasToEase = shape.is('rise', 'readings');
const isTapered = taper.is('taper');
const cloth = choice(words.cloth, { start: 'medium', when: hasToEase });

/** What is asked of a hem: what always matters first. */
export const hemFields = schema(
  words.labels,
  {
    depth: length({
      start: { cm: '2', mm: '20', in: '1' },
      usual: 'hemDepth',
      label: (ask) => (isWhole(ask) ? words.allFor : undefined),
      givesWay: true,
    }),
    given: measured,
    turn: length({
      start: { cm: '0.7', mm: '7', in: '1/4' },
      usual: 'turn',
      when: hasTurn,
      givesWay: true,
    }),
    style,
    shape,
    round: length({ start: { cm: '60', mm: '600', in: '24' }, usual: 'around', when: byReadings }),
    above: length({ start: { cm: '57', mm: '570', in: '23' }, usual: 'around', when: byReadings }),
    apart: maybeLength(words.asDeep, {
      when: either(byReadings, isTapered),
      last: not(byReadings),
    }),
    chord: length({ start: { cm: '40', mm: '400', in: '16' }, usual: 'chord', when: byRise }),
    rise: length({ start: { cm: '5', mm: '50', in: '2' }, when: byRise }),
    cloth,
    ease: number({ start: '6', usual: 'ease', when: all(hasToEase, cloth.is('own')) }),
    edgeStitch: length({ start: { cm: '0.2', mm: '2', in: '1/8' }, usual: 'edgeStitch' }),
    thickness: lengthOrNone(turned.notGiven, { usual: 'clothThick' }),
    finished,
    otherEnd: maybeLength(turned.otherEndHint, { when: given(finished) }),
    left: maybeLength(turned.notGiven, { usual: 'hemDepth' }),
    taper,
    atHem: length({ start: { cm: '20', mm: '200', in: '8' }, usual: 'across', when: isTapered }),
    acrossAbove: length({
      start: { cm: '21', mm: '210', in: '8 1/2' },
      usual: 'across',
      when: isTapered,
    }),
  },
  PAST,
);

/** What is read of them. */
export type HemRead = InputOf<(typeof hemFields)['specs']>;
