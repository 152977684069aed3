/**
 * A character as strokes of a pen, in its own box: x from 0 to `width`, y from 0 (top) to 1
 * (foot), each stroke a list x, y, x, y…
 */
export interface Glyph {
  readonly width: number;
  readonly strokes: readonly (readonly number[])[];
}

/** Choices in which printed numerals differ. */
export interface NumeralForms {
  /** A 1 with a flag, or a bare stroke. */
  readonly flagged: boolean;
  readonly openFour: boolean;
  /** Feet and bars at the ends of strokes. */
  readonly serifs: boolean;
  /** Sides of 0 drawn straight, as engraved numerals have them. */
  readonly straightSides: boolean;
}

/** Points along an ellipse, in degrees clockwise from 3 o'clock. */
export function arc(
  centre: readonly [number, number],
  radii: readonly [number, number],
  from: number,
  to: number,
): number[] {
  const steps = Math.max(4, Math.ceil(Math.abs(to - from) / 14));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = ((from + ((to - from) * i) / steps) * Math.PI) / 180;
    return [centre[0] + radii[0] * Math.cos(angle), centre[1] + radii[1] * Math.sin(angle)];
  }).flat();
}

const ring = (x: number, y: number, rx: number, ry: number) => arc([x, y], [rx, ry], 0, 360);

const SIX = [[...arc([0.44, 0.62], [0.44, 0.62], 283, 180), 0, 0.68], ring(0.29, 0.69, 0.29, 0.31)];

const turned = (strokes: readonly (readonly number[])[], width: number) =>
  strokes.map((stroke) => stroke.map((value, i) => (i % 2 === 0 ? width : 1) - value));

const FIXED: Readonly<Record<string, Glyph>> = {
  '2': {
    width: 0.58,
    strokes: [[...arc([0.28, 0.28], [0.28, 0.28], 190, 395), 0, 1, 0.58, 1]],
  },
  '3': {
    width: 0.58,
    strokes: [
      arc([0.28, 0.25], [0.26, 0.25], 195, 450),
      arc([0.28, 0.74], [0.3, 0.26], 270, 530),
      [0.2, 0.49, 0.28, 0.49],
    ],
  },
  '5': {
    width: 0.58,
    strokes: [[0.53, 0, 0.08, 0, 0.04, 0.47], arc([0.27, 0.68], [0.31, 0.32], 222, 500)],
  },
  '6': { width: 0.58, strokes: SIX },
  '8': { width: 0.58, strokes: [ring(0.29, 0.25, 0.24, 0.25), ring(0.29, 0.745, 0.29, 0.255)] },
  '9': { width: 0.58, strokes: turned(SIX, 0.58) },
};

/** The strokes of one numeral. */
export function numeral(digit: string, forms: NumeralForms): Glyph | undefined {
  if (digit === '0') return zero(forms);
  if (digit === '1') return one(forms);
  if (digit === '4') return four(forms);
  if (digit === '7') {
    const bar = forms.serifs ? [[0, 0, 0, 0.13]] : [];
    return { width: 0.54, strokes: [[0, 0, 0.54, 0, 0.2, 1], ...bar] };
  }
  return FIXED[digit];
}

function zero({ straightSides }: NumeralForms): Glyph {
  if (!straightSides) return { width: 0.58, strokes: [ring(0.29, 0.5, 0.29, 0.5)] };
  const top = arc([0.28, 0.28], [0.28, 0.28], 180, 360);
  return { width: 0.56, strokes: [[...top, ...arc([0.28, 0.72], [0.28, 0.28], 0, 180), 0, 0.28]] };
}

function one({ flagged, serifs }: NumeralForms): Glyph {
  if (!flagged) return { width: 0.12, strokes: [[0.06, 0, 0.06, 1]] };
  const foot = serifs ? [[0.06, 1, 0.42, 1]] : [];
  return { width: serifs ? 0.46 : 0.3, strokes: [[0, 0.22, 0.24, 0, 0.24, 1], ...foot] };
}

function four({ openFour, serifs }: NumeralForms): Glyph {
  const foot = serifs ? [[0.32, 1, 0.58, 1]] : [];
  if (openFour) {
    return { width: 0.6, strokes: [[0.14, 0, 0, 0.66, 0.6, 0.66], [0.45, 0.36, 0.45, 1], ...foot] };
  }
  return { width: 0.6, strokes: [[0.45, 1, 0.45, 0, 0, 0.69, 0.6, 0.69], ...foot] };
}
