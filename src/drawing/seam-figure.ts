import type { Figure, FigureShape, Point } from './figure.ts';

/** A row of a finish as far as it can be drawn: what is done, in mm from the stitch line. */
export interface DrawnRow {
  what: string;
  at: number | undefined;
}

/**
 * A seam in section, its widths to scale, the layers drawn apart, the stitch line at
 * 0: as it is pressed. Pressed open, each allowance lies under its own side of the
 * garment; else the garment is to the left and both allowances to the right.
 */
export function seamSection(finish: string, rows: readonly DrawnRow[], consumed: number): Figure {
  const apart = Math.max(0.8, consumed * 0.12);
  const garment = -consumed * 1.2;
  const at = (what: string) => rows.find((row) => row.what === what)?.at;
  const upright = (
    x: number,
    line: 'stitch' | 'cut',
    from = -2 * apart,
    to = 2 * apart,
  ): FigureShape => ({
    line,
    points: [
      { x, y: from },
      { x, y: to },
    ],
  });
  const layer = (y: number, ...rest: Point[]): FigureShape => ({
    line: 'cloth',
    points: [{ x: garment, y }, ...rest],
  });
  const stitch = upright(0, 'stitch');
  switch (finish) {
    case 'french': {
      const edge = at('turn') ?? consumed;
      const raw = 2 * edge - (at('trim-first') ?? edge); // the trimmed edges lie turned back
      return [
        layer(
          -apart,
          { x: edge, y: -apart },
          { x: edge, y: -apart / 3 },
          { x: raw, y: -apart / 3 },
        ),
        layer(apart, { x: edge, y: apart }, { x: edge, y: apart / 3 }, { x: raw, y: apart / 3 }),
        stitch,
        upright(edge - apart / 4, 'stitch', -apart, apart),
      ];
    }
    case 'felled': {
      const fold = at('turn-under') ?? consumed;
      const under = at('trim-under') ?? at('lay-in') ?? 0;
      return [
        layer(
          -apart,
          { x: fold, y: -apart },
          { x: fold, y: 0 },
          { x: Math.max(0, 2 * fold - consumed), y: 0 },
        ),
        layer(apart, { x: under, y: apart }),
        stitch,
        upright(fold * 0.92, 'stitch'),
        upright(under, 'cut', apart / 2, 1.5 * apart),
      ];
    }
    case 'mock-french': {
      const half = at('press-half') ?? consumed / 2;
      const fold = (y: number, to: number) =>
        layer(y, { x: half, y }, { x: half, y: to }, { x: 0.1 * half, y: to });
      return [
        fold(-apart, -apart / 3),
        fold(apart, apart / 3),
        stitch,
        upright(half * 0.9, 'stitch'),
      ];
    }
    case 'graded': {
      const outer = at('trim') ?? consumed;
      const inner = at('trim-inner') ?? outer;
      return [
        layer(-apart, { x: outer, y: -apart }),
        layer(apart, { x: inner, y: apart }),
        stitch,
        upright(outer, 'cut', -1.5 * apart, -apart / 2),
        upright(inner, 'cut', apart / 2, 1.5 * apart),
      ];
    }
    default:
      return [
        ...pressedOpen(apart, consumed, at('bind')),
        ...rows.flatMap((row) =>
          row.what === 'topstitch' && row.at !== undefined
            ? [
                upright(-row.at, 'stitch', -apart, 3 * apart),
                upright(row.at, 'stitch', -apart, 3 * apart),
              ]
            : [],
        ),
      ];
  }
}

/** Garment to both sides of the stitch line, each allowance folded back under its own side. */
function pressedOpen(apart: number, edge: number, bound: number | undefined): Figure {
  const under = 2 * apart;
  const stitch = (x: number, from: number, to: number): FigureShape => ({
    line: 'stitch',
    points: [
      { x, y: from },
      { x, y: to },
    ],
  });
  const sides = [-1, 1].flatMap((side): FigureShape[] => {
    const cloth: FigureShape = {
      line: 'cloth',
      points: [
        { x: 1.6 * side * edge, y: 0 },
        { x: 0, y: 0 },
        { x: 0, y: under },
        { x: side * edge, y: under },
      ],
    };
    // Overcast, the stitches go round the raw edge.
    if (bound === undefined) {
      return [cloth, stitch(side * edge, under - apart / 2, under + apart / 2)];
    }
    const strip = binding(bound - (edge - bound) / 3, edge, under, apart / 2);
    return [
      cloth,
      side > 0 ? strip : mirrored(strip),
      stitch(side * bound, under - 0.8 * apart, under + 0.8 * apart),
    ];
  });
  return [stitch(0, -apart, under + apart), ...sides];
}

function mirrored(shape: ReturnType<typeof binding>): ReturnType<typeof binding> {
  return { ...shape, points: shape.points.map(({ x, y }) => ({ x: -x, y })) };
}

/** A strip wrapped round a raw edge, in section. */
function binding(from: number, edge: number, y: number, off: number) {
  const round = edge + off / 2;
  return {
    line: 'cloth' as const,
    points: [
      { x: from, y: y - off },
      { x: round, y: y - off },
      { x: round, y: y + off },
      { x: from, y: y + off },
    ],
  };
}
