import { garmentSheetWords as words } from '#words/garment/garment-sheet-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { Drawing } from '../../../calculation/drawing.ts';
import type { Dimension, Dimensioned } from '../../../drawing/dimension.ts';
import type { State } from '../../../garment/actions/state.ts';
import { homeOf } from '../../../garment/record/home.ts';
import { sourceOf } from '../../../garment/work-out/links.ts';
import { type OpenWork, openWork } from '../works/open-work.ts';
import { drawnOf } from '../works/work-labels.ts';
import { givesOf, numberText } from '../works/work-numbers.ts';

/** A side of a work as it is drawn, and which of its numbers stand on the drawing. */
export interface SheetDrawn {
  drawn: Dimensioned;
  homes: readonly string[];
}

/**
 * Draws a side of a work with its numbers as they stand in the garment: what isn't decided, or
 * waits, is said to and has no number. Undefined where there is nothing to draw.
 */
export function sheetDrawn(
  state: State,
  { id, side }: { id: string; side: string },
  drawings: ReadonlyMap<string, Drawing>,
  bench: Bench,
): SheetDrawn | undefined {
  // What is being typed is on no sheet.
  const { pending: _, ...record } = state.record;
  const open = openWork({ ...state, record }, id, side, bench);
  const drawing = open && drawings.get(open.work.calculation);
  const drawn = drawing && drawnOf(drawing, open, givesOf(open, state.answer), bench);
  if (!drawn) return undefined;
  const dimensions = drawn.dimensions.map((one) => ({
    ...one,
    text: textOf(one, open, state, bench),
  }));
  // An output that hands a field on has its name.
  const homes = drawn.dimensions.map(({ by }) =>
    homeOf(id, side, 'given' in by ? by.given : 'found' in by ? by.found : by.made),
  );
  return { drawn: { ...drawn, dimensions }, homes };
}

function textOf({ by, text }: Dimension, open: OpenWork, { answer }: State, bench: Bench): string {
  if ('given' in by) return isUndecided(by.given, open, answer) ? words.undecided : text;
  const key = 'found' in by ? by.found : by.made;
  const gives = givesOf(open, answer).find(({ output }) => output.key === key);
  if (!gives) return text;
  const { output, result, number } = gives;
  if (!result.ok) return words.waits;
  if (result.undecided && result.state !== 'made') return words.undecided;
  return number === undefined || output.kind !== 'length'
    ? text
    : numberText(output, number, bench);
}

/** Whether a field takes a number behind which a decision is open. */
function isUndecided(field: string, { fields, side }: OpenWork, answer: State['answer']): boolean {
  const places = { quantities: answer.sound.quantities, works: answer.works };
  const taken = fields.find((one) => one.field.key === field)?.taken ?? [];
  return taken.some((part) => {
    const source = sourceOf(part, side, places);
    if ('gone' in source) return true;
    return source.keys.some((key) => {
      const result = answer.values.get(key);
      return !result?.ok || result.undecided === true;
    });
  });
}
