import { Unreadable } from './file-problem.ts';

const INCH = 25.4;
/** CSS: a px is 1/96 in, whatever the screen (W3C, CSS Values and Units, absolute lengths). */
const PX_MM = INCH / 96;

/** Absolute units of length of CSS, in mm. */
const MM_PER: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  q: 0.25,
  in: INCH,
  pt: INCH / 72,
  pc: INCH / 6,
  px: PX_MM,
};

const LENGTH = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*([A-Za-z%]*)\s*$/;

export interface SaidLength {
  value: number;
  /** Lower case; '' where none is said. */
  unit: string;
}

/** A length as it is written; undefined where it is none. */
function saidLength(text: string | undefined): SaidLength | undefined {
  const found = text === undefined || text.length > 100 ? null : LENGTH.exec(text);
  if (!found) return undefined;
  return { value: Number(found[1]), unit: found[2]!.toLowerCase() };
}

/** A length of a shape in units of the drawing; NaN where it is none, or goes by a share of something. */
export function inUserUnits(text: string | undefined, absent = 0): number {
  if (text === undefined) return absent;
  const said = saidLength(text);
  if (!said) return Number.NaN;
  if (said.unit === '') return said.value;
  return (said.value * (MM_PER[said.unit] ?? Number.NaN)) / PX_MM;
}

/**
 * How many mm a unit of the drawing is, along and across, from what its root says.
 * @throws {Unreadable} where it doesn't say, and nothing was given for it
 */
export function unitsOf(
  root: ReadonlyMap<string, string>,
  unitMm: number | undefined,
): readonly [number, number] {
  const [wide, high] = [sideMm(root.get('width')), sideMm(root.get('height'))];
  if (wide === undefined && high === undefined) {
    if (!unitMm || !(unitMm > 0 && unitMm < Infinity)) throw new Unreadable({ kind: 'no-units' });
    return [unitMm, unitMm];
  }
  if (!root.has('viewBox')) return [PX_MM, PX_MM];
  const box = root
    .get('viewBox')!
    .trim()
    .split(/[\s,]+/, 5)
    .map(Number);
  const [across, down] = [box[2]!, box[3]!];
  if (box.length !== 4 || !box.every(Number.isFinite) || !(across > 0) || !(down > 0)) {
    throw new Unreadable({ kind: 'no-number', name: 'viewBox' });
  }
  const [x, y] = [(wide ?? Infinity) / across, (high ?? Infinity) / down];
  const fits = Math.min(x, y);
  const stretched = (root.get('preserveAspectRatio') ?? '').trim().startsWith('none');
  return stretched && Number.isFinite(x + y) ? [x, y] : [fits, fits];
}

function sideMm(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const said = saidLength(text);
  // A bare number, or a share of the page, says no length.
  if (!said || said.unit === '' || said.unit === '%') return undefined;
  const mm = MM_PER[said.unit];
  if (mm === undefined) throw new Unreadable({ kind: 'other-units', said: said.unit.slice(0, 20) });
  if (!(said.value > 0) || !Number.isFinite(said.value)) {
    throw new Unreadable({ kind: 'no-number', name: 'width' });
  }
  return said.value * mm;
}
