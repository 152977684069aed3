import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { Drawing, StandingRows } from '../../../calculation/drawing.ts';
import type { Dimension, Dimensioned, DimensionOf } from '../../../drawing/dimension.ts';
import { rowsUnder } from '../../../drawing/row-marks.ts';
import { drawnText, type Rounded } from '../said/value-text.ts';
import type { Label } from './drawn-work.tsx';
import type { OpenWork } from './open-work.ts';
import { type Gives, numberText } from './work-numbers.ts';

/** What is touched: a field, or a number that was found or made. */
export type Touch = { field: string } | { gives: Gives };

/** The drawing of an open work with names on it, and numbers as they stand in the garment. */
export function drawnOf(
  drawing: Drawing | undefined,
  open: OpenWork,
  gives: readonly Gives[],
  bench: Bench,
): Dimensioned | undefined {
  const rows = standingRows(gives);
  const drawn = open.draft && drawing?.draw(open.draft, bench, rows);
  if (!drawn) return undefined;
  const under = Object.entries(rows).flatMap(([key, row]) =>
    row && !drawing?.rows?.includes(key) ? [row] : [],
  );
  const dimensions = drawn.dimensions.map((one): Dimension => {
    const name = nameOf(one.by, open, gives);
    const made = foundBy(one.by, gives);
    const text =
      made && isSaid(made)
        ? numberText(made.output, made.number ?? 0, bench)
        : drawnText(one.text, bench, boundOf(made));
    return { ...one, text: signOf(one.by, open, made) + text, ...(name !== undefined && { name }) };
  });
  return { ...drawn, shapes: rowsUnder(drawn.shapes, under), dimensions };
}

/**
 * Whether a number is said as its key says it: what is made of it, or bends it, no drawing of the plan
 * knows; and what the hand makes is one number wherever it stands, rounded to one side.
 */
function isSaid({ number, result, output }: Gives): boolean {
  if (number === undefined || !result.ok) return false;
  return result.state !== 'planned' || (output.step !== undefined && output.kind === 'length');
}

/** Of what no hand makes: whether it may be no more, or no less. */
function boundOf(made: Gives | undefined): Rounded | undefined {
  const bound = made?.output.bound;
  return bound && { bound };
}

/** The rows that the hand makes, as they stand. */
function standingRows(gives: readonly Gives[]): StandingRows {
  const rows = gives.flatMap(({ output, result }) => {
    if (!output.step || !result.ok || typeof result.value !== 'object') return [];
    const { value: run, made = [] } = result;
    const row = { run, made: run.marks.map((_, rank) => made[rank] !== undefined) };
    return [[output.key, row] as const];
  });
  return Object.fromEntries(rows);
}

/** Before a number that is taken from elsewhere, or made: told from what is typed not by colour alone. */
const [TAKEN, MADE, BEFORE] = ['↳ ', '✓ ', '(✓) '];
const SIGN = /^(?:↳|✓|\(✓\)) /u;

function signOf(by: DimensionOf, open: OpenWork, found: Gives | undefined): string {
  if ('given' in by) return takesAny(open, by.given) ? TAKEN : '';
  if (found && isMadeBefore(found)) return BEFORE;
  return found?.result.ok && found.result.state === 'made' ? MADE : '';
}

function takesAny({ fields }: OpenWork, key: string): boolean {
  return fields.some(({ field, taken }) => field.key === key && taken.length > 0);
}

/** The fields that stand on a drawing. */
export function placedOn(drawn: Dimensioned | undefined): string[] {
  return drawn?.dimensions.flatMap(({ by }) => ('given' in by ? by.given : [])) ?? [];
}

/** How a number of the drawing is shown, and what a touch of it does. */
export function labelFor(
  { by, text: written, name = '' }: Dimension,
  {
    open,
    gives,
    at,
    onTouch,
  }: {
    open: OpenWork;
    gives: readonly Gives[];
    at: string | undefined;
    onTouch: (touch: Touch) => void;
  },
): Label {
  const text = written.replace(SIGN, '');
  if ('given' in by) {
    const one = open.fields.find(({ field }) => field.key === by.given);
    if (!one) return { kind: 'plain', aloud: `${name} ${text}`, current: false };
    return {
      kind: one.taken.length > 0 ? 'linked' : 'given',
      aloud: words.given(name, text),
      current: at === by.given,
      onTouch: () => onTouch({ field: by.given }),
    };
  }
  const found = foundBy(by, gives);
  if (!found?.result.ok) return { kind: 'plain', aloud: `${name} ${text}`, current: false };
  const aloud = isMadeBefore(found)
    ? words.asBefore
    : found.result.state === 'made'
      ? words.asMade
      : words.found;
  return {
    kind: aloud === words.found ? 'found' : 'made',
    aloud: aloud(name, text),
    current: false,
    onTouch: () => onTouch({ gives: found }),
  };
}

/** A step that was made before the app knew, with a plan to stand in for its number. */
export function isMadeBefore({ before, result }: Gives): boolean {
  return before !== undefined && result.ok;
}

function nameOf(by: DimensionOf, open: OpenWork, gives: readonly Gives[]): string | undefined {
  if (!('given' in by)) return foundBy(by, gives)?.output.name;
  return open.fields.find(({ field }) => field.key === by.given)?.field.label;
}

function foundBy(by: DimensionOf, gives: readonly Gives[]): Gives | undefined {
  if ('given' in by) return undefined;
  const key = 'found' in by ? by.found : by.made;
  return gives.find(({ output }) => output.key === key);
}
