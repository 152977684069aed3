import { mmPerUnit, type TapeUnit } from '../graduations/tape-unit.ts';
import { LARGEST } from './limits.ts';
import { pointOn, type ReadScale, tickOfValue } from './scale.ts';
import type { TapeQuestion, TapeReading } from './tape-reading.ts';

/** What the maker is asked of a scale, the best doubtful one if not said; which line first, then its unit. */
export function questionFor(
  scales: readonly ReadScale[],
  index = scales.findIndex(({ sure }) => !sure),
): TapeQuestion {
  const scale = scales[index];
  if (!scale) throw new Error('asked about scales that are all sure');
  const asked = scale.numbers[scale.numbers.length >> 1];
  if (!asked) throw new Error('asked about a scale without a number');
  const { value } = asked;
  if (!scale.doubts.includes('line')) {
    return {
      kind: 'unit',
      scale: index,
      value,
      x: asked.x,
      y: asked.y,
      choices: choicesFor(scale),
    };
  }
  const { zoneFrom, zoneTo } = scale.geometry;
  const place = pointOn(scale.geometry, tickOfValue(scale, value), (zoneFrom + zoneTo) / 2);
  return { kind: 'line', scale: index, value, unit: scale.unit, ...place };
}

function choicesFor({ unit, mmPerTick }: ReadScale): readonly TapeUnit[] {
  if (unit === 'inch') return ['inch', 'cm'];
  const perTick = mmPerTick / mmPerUnit[unit];
  return perTick === 1 ? ['mm', 'cm'] : ['cm', 'inch'];
}

/** The least and the most a line asked about can be: no number of its scale is below zero. */
export function printable(reading: TapeReading, { scale, value }: TapeQuestion) {
  const numbers = reading.scales[scale]?.numbers ?? [];
  return { least: value - Math.min(value, ...numbers.map((one) => one.value)), most: LARGEST };
}

export type TapeAnswer =
  /** The value of the line that was asked about, in the unit it was asked in. */
  | { readonly kind: 'line'; readonly value: number }
  | { readonly kind: 'unit'; readonly unit: TapeUnit };

/**
 * The reading with its question answered: the scale asked about counts as read once nothing is
 * left to ask of it. Where others are read already, what is left is asked on that scale only.
 */
export function answered(reading: TapeReading, answer: TapeAnswer): TapeReading {
  const { question } = reading;
  if (!question || question.kind !== answer.kind) return reading;
  const scales = reading.scales.map((scale, index) =>
    index === question.scale ? settled(scale, question, answer) : scale,
  );
  const { question: _, ...rest } = reading;
  const scale = scales[question.scale];
  if (scale?.sure || reading.outcome === 'read') return { ...rest, outcome: 'read', scales };
  return { ...rest, scales, question: questionFor(scales, question.scale) };
}

function settled(scale: ReadScale, question: TapeQuestion, answer: TapeAnswer): ReadScale {
  const doubts = scale.doubts.filter((doubt) => doubt !== answer.kind);
  const sure = doubts.length === 0;
  if (answer.kind === 'line') {
    const anchorTick = tickOfValue(scale, question.value);
    const by = answer.value - question.value;
    const numbers = scale.numbers.map((one) => ({ ...one, value: one.value + by }));
    return { ...scale, anchorTick, anchorValue: answer.value, numbers, doubts, sure };
  }
  // The numbers stay as printed; what they count makes the graduations larger or smaller.
  const perTick = scale.mmPerTick / mmPerUnit[scale.unit];
  const mmPerTick = perTick * mmPerUnit[answer.unit];
  return { ...scale, unit: answer.unit, mmPerTick, doubts, sure };
}
