import { STEP } from '../lengths/graduation.ts';
import type { Length } from '../lengths/length.ts';
import { padWords } from '../words/pad-words.ts';
import type { Bench } from './bench.ts';
import { nudge, nudgeCount, nudgeText } from './nudge.ts';
import {
  erase,
  tailOf,
  typeDigit,
  typeOperator,
  typePoint,
  typeSeparator,
  typeSixteenths,
  typeStroke,
  typeUnit,
  unitOfTail,
} from './pad-edit.ts';
import type { Fresh, PadProps } from './pad-props.ts';

/** A key of the pad: what stands on it, what it is called, what it does. */
export interface Key {
  face: string;
  name: string;
  press: () => void;
  kind?: 'word' | 'go';
}

const METRIC = ['mm', 'cm', 'm'];

/** The text a digit is added to: nothing, or what is left of it, when the text is fresh. */
function base(text: string, fresh: Fresh): string {
  if (fresh === 'all') return '';
  return fresh === 'number' ? tailOf(text).head + tailOf(text).unit : text;
}

/** The tape a unit is read on. */
function stepOf(unit: string, bench: Bench): Length {
  return METRIC.includes(unit) ? STEP[bench.metric] : STEP[bench.inch];
}

/** Three columns: unit and nudges, the digits, the decimal mark. */
export function digitKeys({ field, text, fresh, bench, onText }: PadProps): (Key | undefined)[] {
  const isLength = field.kind === 'length' || field.kind === 'lengths';
  const unit = unitOfTail(text, bench.unit);
  const nudged = (times: number) =>
    isLength ? nudge(text, bench, times * stepOf(unit, bench)) : nudgeCount(text, times);
  const step = isLength ? nudgeText(unit, bench, stepOf(unit, bench)) : '1';
  const nudgeKey = (times: 1 | -1): Key | undefined =>
    step === undefined
      ? undefined
      : {
          face: `${times < 0 ? '−' : '+'}${step}`,
          name: times < 0 ? padWords.less(step) : padWords.more(step),
          kind: 'word',
          press: () => onText(nudged(times), 'no'),
        };
  return [
    isLength ? unitKey(text, fresh, bench, onText) : undefined,
    nudgeKey(-1),
    nudgeKey(1),
    ...['7', '8', '9', '4', '5', '6', '1', '2', '3', '0'].map((digit) => ({
      face: digit,
      name: digit,
      press: () => onText(typeDigit(base(text, fresh), digit), 'no'),
    })),
    field.kind === 'count'
      ? undefined
      : {
          face: bench.decimalMark,
          name: padWords.point,
          press: () => onText(typePoint(base(text, fresh), bench.decimalMark), 'no'),
        },
    field.kind === 'lengths'
      ? { face: ';', name: padWords.separator, press: () => onText(typeSeparator(text), 'no') }
      : {
          face: padWords.clearFace,
          name: padWords.clear,
          kind: 'word',
          press: () => onText('', 'no'),
        },
  ];
}

/** Changes the unit of the number being typed; a fresh number stays fresh. */
function unitKey(text: string, fresh: Fresh, bench: Bench, onText: PadProps['onText']): Key {
  const foreign = bench.unit === 'in' ? 'cm' : 'in';
  const now = unitOfTail(text, bench.unit);
  const target = now === bench.unit ? foreign : bench.unit;
  const next =
    target === bench.unit ? typeUnit(text, tailOf(text).unit.trim()) : typeUnit(text, target);
  return {
    face: `→ ${target}`,
    name: padWords.switchTo(target),
    kind: 'word',
    press: () => onText(next, fresh === 'no' ? 'no' : 'number'),
  };
}

/** Three columns for a length: fractions or units, sums, erase, next. */
export function lengthKeys(props: PadProps): Key[] {
  const { text, fresh, bench, onText } = props;
  const inInches = !METRIC.includes(unitOfTail(text, bench.unit));
  const operator = (sign: '+' | '−' | '×' | '÷', name: string): Key => ({
    face: sign,
    name,
    press: () => onText(typeOperator(text, sign), 'no'),
  });
  return [
    ...(inInches ? fractionKeys(text, fresh, onText) : unitKeys(text, onText)),
    eraseKey(props),
    operator('+', padWords.plus),
    operator('−', padWords.minus),
    { face: '/', name: padWords.stroke, press: () => onText(typeStroke(text), 'no') },
    operator('×', padWords.times),
    operator('÷', padWords.over),
    nextKey(props),
  ];
}

function fractionKeys(text: string, fresh: Fresh, onText: PadProps['onText']): Key[] {
  const faces: [string, number][] = [
    ['1/8', 2],
    ['1/4', 4],
    ['3/8', 6],
    ['1/2', 8],
    ['5/8', 10],
    ['3/4', 12],
    ['7/8', 14],
    ['1/16', 1],
  ];
  return faces.map(([face, sixteenths]) => ({
    face,
    name: padWords.fraction(face),
    press: () => onText(typeSixteenths(base(text, fresh), sixteenths), 'no'),
  }));
}

function unitKeys(text: string, onText: PadProps['onText']): Key[] {
  const units = ['mm', 'cm', 'm', 'in', 'yd', 'L'];
  const twice = (face: '× 2' | '÷ 2', name: string): Key => ({
    face,
    name,
    kind: 'word',
    press: () =>
      onText(`${typeOperator(text, face === '× 2' ? '×' : '÷')}${text === '' ? '' : '2'}`, 'no'),
  });
  return [
    ...units.map(
      (unit): Key => ({
        face: unit,
        name: padWords.unit(unit),
        kind: 'word',
        press: () => onText(typeUnit(text, unit), 'no'),
      }),
    ),
    twice('÷ 2', padWords.halve),
    twice('× 2', padWords.double),
  ];
}

/** For a count or a plain number: only erase, clear and next. */
export function plainKeys(props: PadProps): (Key | undefined)[] {
  const empty = Array.from({ length: 8 }, () => undefined);
  return [...empty, eraseKey(props), ...Array.from({ length: 5 }, () => undefined), nextKey(props)];
}

function eraseKey({ text, fresh, onText }: PadProps): Key {
  return {
    face: '⌫',
    name: padWords.erase,
    press: () => onText(fresh === 'all' ? '' : erase(text), 'no'),
  };
}

function nextKey({ onNext }: PadProps): Key {
  return { face: padWords.nextFace, name: padWords.next, kind: 'go', press: onNext };
}
