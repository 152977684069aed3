import type { Point } from '../../outline.ts';
import { type Drawn, drawnBy } from './drawn.ts';
import { type DxfRecord, dxfRecords, numberIn, numberOf, textOf } from './dxf-records.ts';
import {
  arcOf,
  isClosed,
  ownVertices,
  placeOf,
  polyline,
  type Vertex,
  vertexOf,
} from './dxf-shapes.ts';
import { type FileAsked, type FileOutcome, MOST_CHARACTERS, Unreadable } from './file-problem.ts';

/** mm of the units a file may say ($INSUNITS of the DXF reference); 0 says none. */
const UNITS: Readonly<Record<number, number>> = {
  1: 25.4,
  2: 304.8,
  4: 1,
  5: 10,
  6: 1000,
  9: 0.0254,
  10: 914.4,
  13: 0.001,
  14: 100,
};

/** Parts that draw what isn't read here; all others that aren't known draw no line. */
const NOT_READ = new Set([
  ...['SPLINE', 'ELLIPSE', 'HELIX', 'INSERT', 'HATCH', 'MLINE', 'REGION', 'BODY', '3DSOLID'],
  ...['3DFACE', 'SOLID', 'TRACE', 'MESH', 'SURFACE', 'XLINE', 'RAY'],
]);

/** Flags of a polyline that is a mesh in space. */
const MESH = 16 | 64;

/**
 * The closed outlines of a DXF file in its text form, in mm: polylines with their bows, circles,
 * and lines and arcs of one layer whose ends meet. A shape is called by its layer.
 */
export function readDxf(text: string, asked: FileAsked = {}): FileOutcome {
  if (text.length > MOST_CHARACTERS) {
    const problem = { kind: 'too-large', characters: text.length, most: MOST_CHARACTERS } as const;
    return { ok: false, problem };
  }
  return drawnBy((drawn) => {
    const reading: Reading = { drawn, section: '', units: undefined, asked, open: undefined };
    for (const record of dxfRecords(text)) take(reading, record);
  });
}

interface Reading {
  drawn: Drawn;
  section: string;
  /** The number the file has for its units. */
  units: number | undefined;
  asked: FileAsked;
  /** A polyline whose vertices follow as parts of their own. */
  open: { record: DxfRecord; vertices: Vertex[] } | undefined;
}

function take(reading: Reading, record: DxfRecord): void {
  if (record.type === 'SECTION') {
    reading.section = textOf(record, 2);
    if (reading.section === 'HEADER') reading.units = unitsSaid(record);
  } else if (reading.section === 'ENTITIES') {
    entity(reading, record, unitOf(reading));
  }
}

function unitsSaid({ values }: DxfRecord): number | undefined {
  const at = values.findIndex(([code, value]) => code === 9 && value.trim() === '$INSUNITS');
  const said = at < 0 ? undefined : values[at + 1];
  return said?.[0] === 70 ? numberIn(said[1]) : undefined;
}

function unitOf({ units, asked: { unitMm } }: Reading): number {
  if (units) {
    const mm = UNITS[units];
    if (mm === undefined) throw new Unreadable({ kind: 'other-units', said: `$INSUNITS ${units}` });
    return mm;
  }
  if (!unitMm || !(unitMm > 0 && unitMm < Infinity)) throw new Unreadable({ kind: 'no-units' });
  return unitMm;
}

function entity(reading: Reading, record: DxfRecord, unitMm: number): void {
  const { drawn, open } = reading;
  if (record.type === 'VERTEX') {
    const vertex = open && vertexOf(record);
    if (vertex) open.vertices.push(vertex);
    return;
  }
  if (open) {
    const closed = isClosed(open.record);
    draw(drawn, open.record, polyline(open.vertices, closed, unitMm), closed, unitMm);
    reading.open = undefined;
  }
  // What lies on a sheet of paper, or is hidden, is no piece.
  if (numberOf(record, 67) === 1 || numberOf(record, 60) === 1) return;
  const name = textOf(record, 8);
  if (NOT_READ.has(record.type) || (record.type === 'POLYLINE' && numberOf(record, 70) & MESH)) {
    drawn.problem({ kind: 'unknown-curve', name, curve: record.type });
  } else if (record.type === 'POLYLINE') {
    reading.open = { record, vertices: [] };
  } else {
    simple(drawn, record, unitMm);
  }
}

/** Draws a part that is a line by itself. */
function simple(drawn: Drawn, record: DxfRecord, unitMm: number): void {
  const { type } = record;
  const whole = type === 'CIRCLE';
  if (type === 'LINE') {
    const ends = [placeOf(record, 10), placeOf(record, 11)];
    // A line is where it is, however its plane is turned.
    drawn.line(textOf(record, 8), ends.map(scaled(unitMm, 1)), false);
  } else if (type === 'LWPOLYLINE') {
    const closed = isClosed(record);
    draw(drawn, record, polyline(ownVertices(record), closed, unitMm), closed, unitMm);
  } else if (whole || type === 'ARC') {
    const points = arcOf(record, whole, unitMm);
    if (points) draw(drawn, record, points, whole, unitMm);
    else drawn.problem({ kind: 'no-number', name: textOf(record, 8) });
  }
}

const scaled =
  (unitMm: number, side: number) =>
  ([x, y]: Point): Point => [side * x * unitMm, y * unitMm];

/** Draws what lies in a plane: of the sheet, or of its back, where x runs the other way. */
function draw(
  drawn: Drawn,
  record: DxfRecord,
  points: readonly Point[],
  closed: boolean,
  unitMm: number,
): void {
  const name = textOf(record, 8);
  const [x, y, z] = [numberOf(record, 210), numberOf(record, 220), numberOf(record, 230, 1)];
  if (x !== 0 || y !== 0 || !(z !== 0)) {
    drawn.problem({ kind: 'unknown-curve', name, curve: record.type });
  } else {
    drawn.line(name, points.map(scaled(unitMm, Math.sign(z))), closed);
  }
}
