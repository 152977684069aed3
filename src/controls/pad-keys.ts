import { padWords } from '#words/controls/pad-words.ts';
import type { Bench } from '../calculation/bench.ts';
import type { Field } from '../calculation/calculation.ts';
import { STEP } from '../lengths/graduation.ts';
import type { Length } from '../lengths/length.ts';
import { nudge, nudgeCount, nudgeText } from './nudge.ts';
import {
  erase,
  tailOf,
  typeBracket,
  typeDigit,
  typeOperator,
  typePoint,
  typeSeparator,
  typeSixteenths,
  typeStroke,
  typeUnit,
} from './pad-edit.ts';

/** What the next digit does: goes on, or starts the number or the whole text anew. */
export type Fresh = 'no' | 'number' | 'all';

/** A key of the pad: what stands on it, what it is called, what it makes of the text. */
export interface Key {
  face: string;
  name: string;
  kind?: 'word' | 'go';
  /** Not there on the key that leads to the next field. */
  edit?(text: string, fresh: Fresh): string;
  /** After this key the number is still to be typed anew. */
  staysFresh?: boolean;
}

/** What decides which keys there are; the text itself does not. */
export interface PadKind {
  kind: Field['kind'];
  /** The unit of the number being typed. */
  unit: string;
  bench: Bench;
}

const METRIC = ['mm', 'cm', 'm'];
const DIGITS = [...'7894561230'];

/**
 * The text a digit is added to. A fresh text leaves the unit it was in, which is
 * the one the keys are for.
 */
function base(text: string, fresh: Fresh): string {
  if (fresh === 'no') return text;
  const { head, unit } = tailOf(text);
  return fresh === 'all' ? unit : head + unit;
}

export function isLength(kind: Field['kind']): boolean {
  return kind === 'length' || kind === 'lengths';
}

/** The tape a unit is read on. */
function stepOf(unit: string, bench: Bench): Length {
  return METRIC.includes(unit) ? STEP[bench.metric] : STEP[bench.inch];
}

/** Three columns: unit and nudges, the digits, the decimal mark. */
export function digitKeys(pad: PadKind): (Key | undefined)[] {
  const { kind, bench } = pad;
  const point: Key = {
    face: bench.decimalMark,
    name: padWords.point,
    edit: (text, fresh) => typePoint(base(text, fresh), bench.decimalMark),
  };
  return [
    isLength(kind) ? unitKey(pad) : undefined,
    nudgeKey(pad, -1),
    nudgeKey(pad, 1),
    ...DIGITS.map(
      (digit): Key => ({
        face: digit,
        name: digit,
        edit: (text, fresh) => typeDigit(base(text, fresh), digit),
      }),
    ),
    kind === 'count' ? undefined : point,
    kind === 'lengths'
      ? { face: ';', name: padWords.separator, edit: typeSeparator }
      : { face: padWords.clearFace, name: padWords.clear, kind: 'word', edit: () => '' },
  ];
}

/** Moves the number by a graduation of its tape, a count by one. */
function nudgeKey({ kind, unit, bench }: PadKind, times: 1 | -1): Key | undefined {
  const step = isLength(kind) ? nudgeText(unit, bench, stepOf(unit, bench)) : '1';
  if (step === undefined) return undefined;
  return {
    face: `${times < 0 ? '−' : '+'}${step}`,
    name: times < 0 ? padWords.less(step) : padWords.more(step),
    kind: 'word',
    edit: (text) =>
      isLength(kind) ? nudge(text, bench, times * stepOf(unit, bench)) : nudgeCount(text, times),
  };
}

/** Changes the unit of the number being typed; a fresh number stays fresh. */
function unitKey({ unit, bench }: PadKind): Key {
  const foreign = bench.unit === 'in' ? 'cm' : 'in';
  const target = unit === bench.unit ? foreign : bench.unit;
  return {
    face: padWords.switchFace(target),
    name: padWords.switchTo(target),
    kind: 'word',
    edit: (text) => typeUnit(text, target === bench.unit ? tailOf(text).unit.trim() : target),
    staysFresh: true,
  };
}

/** Three columns for a length: fractions or units, sums, erase, next. */
export function lengthKeys({ unit }: PadKind): Key[] {
  const operator = (face: '+' | '−' | '×' | '÷', name: string): Key => ({
    face,
    name,
    edit: (text) => typeOperator(text, face),
  });
  return [
    ...(METRIC.includes(unit) ? unitKeys() : fractionKeys()),
    ERASE,
    operator('+', padWords.plus),
    operator('−', padWords.minus),
    METRIC.includes(unit)
      ? { face: '( )', name: padWords.bracket, edit: typeBracket }
      : { face: '/', name: padWords.stroke, edit: typeStroke },
    operator('×', padWords.times),
    operator('÷', padWords.over),
    NEXT,
  ];
}

function fractionKeys(): Key[] {
  const faces = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8', '1/16'];
  return faces.map((face, i) => ({
    face,
    name: padWords.fraction(face),
    edit: (text, fresh) => typeSixteenths(base(text, fresh), i < 7 ? 2 * (i + 1) : 1),
  }));
}

function unitKeys(): Key[] {
  const twice = (sign: '×' | '÷', name: string): Key => ({
    face: `${sign} 2`,
    name,
    kind: 'word',
    edit: (text) => (text === '' ? '' : `${typeOperator(text, sign)}2`),
  });
  return [
    ...['mm', 'cm', 'm', 'in', 'yd', 'L'].map(
      (unit): Key => ({
        face: unit,
        name: padWords.unit(unit),
        kind: 'word',
        edit: (text) => typeUnit(text, unit),
      }),
    ),
    twice('÷', padWords.halve),
    twice('×', padWords.double),
  ];
}

/** For a count or a plain number: only erase and next, where a length has them. */
export function plainKeys(): (Key | undefined)[] {
  return Array.from({ length: 15 }, (_, i) => (i === 8 ? ERASE : i === 14 ? NEXT : undefined));
}

const ERASE: Key = {
  face: '⌫',
  name: padWords.erase,
  edit: (text, fresh) => (fresh === 'all' ? '' : erase(text)),
};

const NEXT: Key = { face: padWords.nextFace, name: padWords.next, kind: 'go' };
