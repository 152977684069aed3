import type { TapeReading } from './read-at.ts';
import { mmPerUnit, type TapeQuestion, type TapeUnit } from './reading.ts';
import { pointOn, type ReadScale, tickOfValue } from './scale.ts';

/** What the maker is asked of the best doubtful scale; which line first, then its unit. */
export function questionFor(scales: readonly ReadScale[]): TapeQuestion {
  const index = scales.findIndex(({ sure }) => !sure);
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

export type TapeAnswer =
  /** The value of the line that was asked about, in the unit it was asked in. */
  | { readonly kind: 'line'; readonly value: number }
  | { readonly kind: 'unit'; readonly unit: TapeUnit };

/** The reading with its question answered: the scale asked about counts as read once nothing is left to ask. */
export function answered(reading: TapeReading, answer: TapeAnswer): TapeReading {
  const { question } = reading;
  if (!question || question.kind !== answer.kind) return reading;
  const scales = reading.scales.map((scale, index) =>
    index === question.scale ? settled(scale, question, answer) : scale,
  );
  const { question: _, ...rest } = reading;
  const scale = scales[question.scale];
  if (scale?.sure) return { ...rest, outcome: 'read', scales };
  return { ...rest, scales, question: questionFor(scales) };
}

function settled(scale: ReadScale, question: TapeQuestion, answer: TapeAnswer): ReadScale {
  const doubts = scale.doubts.filter((doubt) => doubt !== answer.kind);
  const sure = doubts.length === 0;
  if (answer.kind === 'line') {
    const anchorTick = tickOfValue(scale, question.value);
    return { ...scale, anchorTick, anchorValue: answer.value, doubts, sure };
  }
  // The numbers stay as printed; what they count makes the graduations larger or smaller.
  const perTick = scale.mmPerTick / mmPerUnit[scale.unit];
  const mmPerTick = perTick * mmPerUnit[answer.unit];
  return { ...scale, unit: answer.unit, mmPerTick, doubts, sure };
}
