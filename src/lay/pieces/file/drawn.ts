import type { Point } from '../../outline.ts';
import { plainOutline } from '../piece-outline.ts';
import {
  type FileOutcome,
  type FileProblem,
  type FileShape,
  MOST_FILE_CORNERS,
  MOST_LINES,
  MOST_SHAPES,
  Unreadable,
} from './file-problem.ts';

/** Ends this near to each other, in mm, are one place: files are written with few digits. */
const CLOSES = 0.05;
/** Problems kept beside the shapes; a damaged file has as many as lines. */
const MOST_PROBLEMS = 20;

/** What has been read of a file so far. */
export interface Drawn {
  /**
   * A line as it is drawn, in mm; open where its ends are apart and nothing says that it closes.
   * Open ones of one layer that meet are joined.
   */
  line(name: string, points: readonly Point[], closed: boolean, layer?: string): void;
  problem(problem: FileProblem): void;
}

interface Line {
  name: string;
  layer: string;
  points: Point[];
}

/** Reads a file by `read`, and gives what it drew; what stops it is a problem. */
export function drawnBy(read: (drawn: Drawn) => void): FileOutcome {
  const closed: Line[] = [];
  const open: Line[] = [];
  const problems: FileProblem[] = [];
  let corners = 0;
  const problem = (found: FileProblem) => {
    if (problems.length < MOST_PROBLEMS) problems.push(found);
  };
  const line: Drawn['line'] = (name, points, isClosed, layer = name) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last || points.length < 2) return;
    // A line of no length is left where a hand clicked twice.
    if (points.length === 2 && !isClosed && near(first, last)) return;
    corners += points.length;
    if (corners > MOST_FILE_CORNERS) throw tooMany('corners', MOST_FILE_CORNERS);
    if (!points.every(([x, y]) => Number.isFinite(x + y))) {
      problem({ kind: 'no-number', name });
    } else if (isClosed || near(first, last)) {
      closed.push({ name, layer, points: [...points] });
      if (closed.length > MOST_SHAPES) throw tooMany('shapes', MOST_SHAPES);
    } else {
      open.push({ name, layer, points: [...points] });
      if (open.length > MOST_LINES) throw tooMany('lines', MOST_LINES);
    }
  };
  try {
    read({ line, problem });
    const left = joined(open, closed);
    if (closed.length > MOST_SHAPES) throw tooMany('shapes', MOST_SHAPES);
    return given(closed, problems, left);
  } catch (stopped) {
    if (stopped instanceof Unreadable) return { ok: false, problem: stopped.problem };
    throw stopped;
  }
}

const tooMany = (what: 'shapes' | 'corners' | 'lines', most: number) =>
  new Unreadable({ kind: 'too-many', what, most });

const near = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]) <= CLOSES;

function given(closed: readonly Line[], problems: FileProblem[], open: number): FileOutcome {
  const shapes: FileShape[] = [];
  for (const { name, points } of closed) {
    const [first, last] = [points[0]!, points.at(-1)!];
    // An outline that comes back to where it begins names that corner once.
    const corners = near(first, last) ? points.slice(0, -1) : points;
    const found = plainOutline(corners.filter((at, i) => i === 0 || !same(at, corners[i - 1]!)));
    if (found.ok) shapes.push({ name, outline: found.value.outline });
    else if (problems.length < MOST_PROBLEMS)
      problems.push({ kind: 'no-piece', name, problem: found.problems[0] });
  }
  if (shapes.length) return { ok: true, shapes, problems, open };
  return { ok: false, problem: problems[0] ?? { kind: 'nothing-closed', open } };
}

const same = (a: Point, b: Point) => a[0] === b[0] && a[1] === b[1];

/**
 * Joins lines whose ends meet, as a drawing of lines and arcs has them, each with one of
 * its own layer; those that close so are added. Gives how many stay open.
 */
function joined(open: readonly Line[], closed: Line[]): number {
  const left = new Set(open);
  const ends = endsOf(open);
  let stay = 0;
  for (const line of open) {
    if (!left.delete(line)) continue;
    const points = [...line.points];
    while (!near(points[0]!, points.at(-1)!)) {
      const next = ends.near(line.layer, points.at(-1)!, left);
      if (!next) break;
      left.delete(next);
      const onward = near(next.points[0]!, points.at(-1)!)
        ? next.points
        : [...next.points].reverse();
      points.push(...onward.slice(1));
    }
    if (near(points[0]!, points.at(-1)!)) closed.push({ ...line, points });
    else stay++;
  }
  return stay;
}

/** The ends of lines by layer and square of the sheet, so that thousands are joined at once. */
function endsOf(lines: readonly Line[]) {
  const square = (layer: string, [x, y]: Point, dx = 0, dy = 0) =>
    `${Math.round(x / CLOSES / 2) + dx} ${Math.round(y / CLOSES / 2) + dy} ${layer}`;
  const bySquare = new Map<string, Line[]>();
  for (const line of lines) {
    for (const end of [line.points[0]!, line.points.at(-1)!]) {
      const key = square(line.layer, end);
      const there = bySquare.get(key);
      if (there) there.push(line);
      else bySquare.set(key, [line]);
    }
  }
  const steps = [-1, 0, 1];
  return {
    near(layer: string, place: Point, left: ReadonlySet<Line>): Line | undefined {
      for (const dx of steps) {
        for (const dy of steps) {
          const there = bySquare.get(square(layer, place, dx, dy));
          const found = there && endingAt(place, there, left);
          if (found) return found;
        }
      }
      return undefined;
    },
  };
}

/** One of the lines with an end at the place; those that are joined already leave the list. */
function endingAt(place: Point, there: Line[], left: ReadonlySet<Line>): Line | undefined {
  for (let i = there.length - 1; i >= 0; i--) {
    const line = there[i]!;
    if (!left.has(line)) {
      there[i] = there.at(-1)!;
      there.pop();
    } else if (near(line.points[0]!, place) || near(line.points.at(-1)!, place)) {
      return line;
    }
  }
  return undefined;
}
