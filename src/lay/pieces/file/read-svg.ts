import type { Point } from '../../outline.ts';
import { type Drawn, drawnBy } from './drawn.ts';
import { type FileAsked, type FileOutcome, MOST_CHARACTERS, Unreadable } from './file-problem.ts';
import { shapePath } from './svg-shapes.ts';
import { at, growth, type Matrix, SAME, times, transformOf } from './svg-transform.ts';
import { unitsOf } from './svg-units.ts';
import { xmlEvents } from './xml.ts';

/** Parts that hold what isn't drawn where it stands. */
const NOT_DRAWN = new Set(['defs', 'symbol', 'clipPath', 'mask', 'marker', 'pattern', 'metadata']);
/** Parts that would draw what isn't read here. */
const NOT_READ = new Set(['use', 'svg', 'image', 'foreignObject', 'switch']);

/** A turn that stands among the styles, where it isn't followed. */
const STYLED = /(?:^|;)\s*transform\s*:/;
const SHEET_TURN = /[{;\s](?:transform|scale|rotate|translate|zoom)\s*:/;

interface Level {
  matrix: Matrix;
  name: string;
  /** The name of what holds it. */
  layer: string;
  drawn: boolean;
}

/**
 * The closed outlines of an SVG file, in mm, y upwards (W3C, SVG 1.1): paths, polygons, rectangles,
 * circles and ellipses wherever they stand, moved and turned as the file says.
 */
export function readSvg(text: string, asked: FileAsked = {}): FileOutcome {
  if (text.length > MOST_CHARACTERS) {
    const problem = { kind: 'too-large', characters: text.length, most: MOST_CHARACTERS } as const;
    return { ok: false, problem };
  }
  return drawnBy((drawn) => {
    const levels: Level[] = [];
    let begun = false;
    for (const event of xmlEvents(text)) {
      begun = true;
      if (event.kind === 'begins' && event.name === 'style') noTurns(text, event.from);
      if (event.kind === 'ends') levels.pop();
      else if (levels.length)
        levels.push(levelOf(event.name, event.attributes, levels.at(-1)!, drawn));
      else levels.push(rootOf(event.name, event.attributes, asked));
    }
    if (!begun) throw new Unreadable({ kind: 'damaged', line: 1 });
  });
}

/** A turn of a style sheet isn't followed, and nothing tells whose it is. */
function noTurns(text: string, from: number): void {
  const end = text.indexOf('</', from);
  if (SHEET_TURN.test(text.slice(from, end < 0 ? from : end))) {
    throw new Unreadable({ kind: 'unknown-curve', name: '', curve: 'style: transform' });
  }
}

function rootOf(name: string, attributes: ReadonlyMap<string, string>, asked: FileAsked): Level {
  if (name !== 'svg') throw new Unreadable({ kind: 'damaged', line: 1 });
  const [x, y] = unitsOf(attributes, asked.unitMm);
  // A file counts downwards, cloth upwards: left as it is, each piece would be its own mirror.
  return { matrix: [x, 0, 0, -y, 0, 0], name: '', layer: '', drawn: true };
}

function levelOf(
  part: string,
  attributes: ReadonlyMap<string, string>,
  above: Level,
  drawn: Drawn,
): Level {
  const name = attributes.get('id')?.slice(0, 100) ?? above.name;
  const hidden =
    attributes.get('display') === 'none' ||
    /display\s*:\s*none/.test(attributes.get('style') ?? '');
  const level = {
    matrix: above.matrix,
    name,
    layer: above.name,
    drawn: above.drawn && !hidden && !NOT_DRAWN.has(part),
  };
  if (!level.drawn) return level;
  const styled = STYLED.test(attributes.get('style') ?? '');
  if (NOT_READ.has(part) || styled) {
    drawn.problem({ kind: 'unknown-curve', name, curve: styled ? 'style: transform' : part });
    return { ...level, drawn: false };
  }
  const own = attributes.has('transform') ? transformOf(attributes.get('transform')!) : SAME;
  if (!own) {
    drawn.problem({ kind: 'no-number', name });
    return { ...level, drawn: false };
  }
  const matrix = times(above.matrix, own);
  draw(part, attributes, { ...level, matrix }, drawn);
  return { ...level, matrix };
}

function draw(
  part: string,
  attributes: ReadonlyMap<string, string>,
  { matrix, name, layer }: Level,
  drawn: Drawn,
): void {
  const subpaths = shapePath(part, attributes, 1 / growth(matrix));
  if (subpaths === 'none') return;
  if (!subpaths) {
    drawn.problem({ kind: 'no-number', name });
    return;
  }
  for (const { points, closed } of subpaths) {
    drawn.line(
      name,
      points.map((place): Point => at(matrix, place)),
      closed,
      layer,
    );
  }
}
