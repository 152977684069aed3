import type { PaperPage, PaperShape } from '../../src/drawing/paper-job.ts';

type Text = Extract<PaperShape, { kind: 'text' }>;

interface SeenBand {
  joins: { letter: string; x: number }[];
  holes: { x: number; y: number }[];
}

/** What a person with scissors and paste sees of a page: bands over their captions. */
function bandsSeen({ shapes }: PaperPage): SeenBand[] {
  const texts = shapes.filter((shape): shape is Text => shape.kind === 'text');
  const captions = texts.filter(({ text }) => / to .* of .* mm, measured /.test(text));
  const heights = captions.map(({ at }) => at.y).sort((one, other) => one - other);
  return heights.map((foot, i) => {
    const isHere = (y: number) => y < foot && y > (heights[i - 1] ?? 0);
    const joins = texts.flatMap(({ text, at }) => {
      const letter = /^([A-Z]+): join here$/.exec(text)?.[1];
      return letter && isHere(at.y) ? [{ letter, x: lineBeside(shapes, at) }] : [];
    });
    const holes = shapes.flatMap((shape) =>
      shape.kind === 'circle' && isHere(shape.at.y) ? [shape.at] : [],
    );
    return { joins, holes };
  });
}

/** The upright line that begins as high as a word and is next to it. */
function lineBeside(shapes: readonly PaperShape[], at: { x: number; y: number }): number {
  const lines = shapes.flatMap((shape) =>
    shape.kind === 'line' && shape.from.x === shape.to.x && shape.from.y === at.y
      ? [shape.from.x]
      : [],
  );
  const away = (x: number) => Math.abs(x - at.x);
  return lines.reduce((best, x) => (away(x) < away(best) ? x : best), Number.POSITIVE_INFINITY);
}

/**
 * Every hole's place along the strip, the bands laid upon each other by the letters of their
 * joining marks; in order, those in an overlap from both bands.
 */
export function joinedPlaces(pages: readonly PaperPage[]): number[] {
  const bands = pages.flatMap(bandsSeen);
  const places: number[] = [];
  let origin = -(pages[0] ? (firstLeft(pages[0]) ?? 0) : 0);
  for (const [i, band] of bands.entries()) {
    const before = bands[i - 1];
    for (const { letter, x } of before?.joins ?? []) {
      const same = band.joins.find((join) => join.letter === letter);
      if (same) origin += x - same.x;
    }
    places.push(...band.holes.map(({ x }) => origin + x));
  }
  return places.sort((one, other) => one - other);
}

/** Where the strip's cut end lies on the first page: the first upright line. */
function firstLeft({ shapes }: PaperPage): number | undefined {
  const ends = shapes.flatMap((shape) =>
    shape.kind === 'line' && shape.from.x === shape.to.x && shape.weight === 0.3
      ? [shape.from.x]
      : [],
  );
  return ends[0];
}
