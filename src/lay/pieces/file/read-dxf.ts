import type { Point } from '../../outline.ts';
import { type Drawn, drawnBy } from './drawn.ts';
import { type BlockPlace, DxfBlocks, ON_SHEET, sideOf } from './dxf-blocks.ts';
import {
  BROKEN_OFF,
  type DxfRecord,
  dxfRecords,
  numberIn,
  numberOf,
  textOf,
} from './dxf-records.ts';
import {
  arcOf,
  isClosed,
  ownVertices,
  placeOf,
  polyline,
  type Vertex,
  vertexOf,
} from './dxf-shapes.ts';
import { spline } from './dxf-spline.ts';
import { type FileAsked, type FileOutcome, MOST_CHARACTERS, Unreadable } from './file-problem.ts';
import { at } from './svg-transform.ts';

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
  ...['ELLIPSE', 'HELIX', 'HATCH', 'MLINE', 'REGION', 'BODY', '3DSOLID'],
  ...['3DFACE', 'SOLID', 'TRACE', 'MESH', 'SURFACE', 'XLINE', 'RAY'],
]);

/** Blocks within blocks that are followed, and parts of them all that are drawn. */
const [MOST_DEPTH, MOST_INSERTED] = [16, 100_000];

/** Flags of a polyline that is a mesh in space. */
const MESH = 16 | 64;

/**
 * The closed outlines of a DXF file in its text form, in mm: polylines with their bows, circles, splines,
 * and lines and arcs of one layer whose ends meet, also those of blocks, wherever these are put. A shape is
 * called by its layer, and by its block.
 */
export function readDxf(text: string, asked: FileAsked = {}): FileOutcome {
  if (text.length > MOST_CHARACTERS) {
    const problem = { kind: 'too-large', characters: text.length, most: MOST_CHARACTERS } as const;
    return { ok: false, problem };
  }
  return drawnBy((drawn) => {
    const reading: Reading = {
      ...{ drawn, asked, section: '', units: undefined, open: undefined },
      ...{ blocks: new DxfBlocks(), place: ON_SHEET, inserted: 0, whole: false },
    };
    for (const record of dxfRecords(text)) take(reading, record);
  });
}

interface Reading {
  drawn: Drawn;
  section: string;
  /** The number the file has for its units. */
  units: number | undefined;
  asked: FileAsked;
  blocks: DxfBlocks;
  /** Where what is read now is put. */
  place: BlockPlace;
  /** Parts of blocks that were put somewhere so far. */
  inserted: number;
  /** All that lies on the sheet has come. */
  whole: boolean;
  /** A polyline whose vertices follow as parts of their own. */
  open: { record: DxfRecord; vertices: Vertex[] } | undefined;
}

function take(reading: Reading, record: DxfRecord): void {
  if (record.type === BROKEN_OFF) {
    breakOff(reading, record);
  } else if (record.type === 'SECTION') {
    reading.section = textOf(record, 2);
    if (reading.section === 'HEADER') reading.units = unitsSaid(record);
    if (reading.section === 'ENTITIES') reading.whole = false;
  } else if (reading.section === 'BLOCKS') {
    reading.blocks.take(record);
  } else if (reading.section === 'ENTITIES') {
    reading.whole = record.type === 'ENDSEC';
    entity(reading, record, unitOf(reading));
  }
}

/** Of what a file ends in the middle of nothing is drawn: a piece would be cut too small by it. */
function breakOff(reading: Reading, record: DxfRecord): void {
  if (reading.whole) return;
  if (reading.section !== 'ENTITIES') {
    throw new Unreadable({ kind: 'damaged', line: numberOf(record, 0) });
  }
  reading.drawn.problem({ kind: 'broken-off' });
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
  const { open } = reading;
  if (record.type === 'VERTEX') {
    const vertex = open && vertexOf(record);
    if (vertex) open.vertices.push(vertex);
    return;
  }
  closeOpen(reading, unitMm);
  // What lies on a sheet of paper, or is hidden, is no piece.
  if (numberOf(record, 67) === 1 || numberOf(record, 60) === 1) return;
  if (NOT_READ.has(record.type) || (record.type === 'POLYLINE' && numberOf(record, 70) & MESH)) {
    unknown(reading, record);
  } else if (record.type === 'POLYLINE') {
    reading.open = { record, vertices: [] };
  } else if (record.type === 'INSERT') {
    insert(reading, record, unitMm);
  } else {
    simple(reading, record, unitMm);
  }
}

/** A polyline of several parts is whole once another part begins. */
function closeOpen(reading: Reading, unitMm: number): void {
  const { open } = reading;
  reading.open = undefined;
  if (!open) return;
  const closed = isClosed(open.record);
  draw(
    reading,
    open.record,
    polyline(open.vertices, closed, fineMm(reading, unitMm)),
    closed,
    unitMm,
  );
}

const unknown = ({ drawn, place }: Reading, record: DxfRecord) =>
  drawn.problem({
    kind: 'unknown-curve',
    name: place.named(textOf(record, 8)),
    curve: record.type,
  });

/** How long a unit of what is read now is on the sheet, in mm, where it is longest. */
const fineMm = ({ place: { grows } }: Reading, unitMm: number) => grows * unitMm;

/** Draws all of a block where it is put. */
function insert(reading: Reading, record: DxfRecord, unitMm: number): void {
  const before = reading.place;
  const put = reading.blocks.put(record, before, reading.inserted);
  if (put === 'no-number') {
    reading.drawn.problem({ kind: 'no-number', name: before.named(textOf(record, 8)) });
  } else if (!put) {
    unknown(reading, record);
  } else {
    if (put.place.depth > MOST_DEPTH) throw new Unreadable({ kind: 'too-deep', most: MOST_DEPTH });
    reading.place = put.place;
    for (const part of put.records) {
      reading.inserted++;
      if (reading.inserted > MOST_INSERTED) {
        throw new Unreadable({ kind: 'too-many', what: 'parts', most: MOST_INSERTED });
      }
      entity(reading, part, unitMm);
    }
    closeOpen(reading, unitMm);
    reading.place = before;
  }
}

/** Draws a part that is a line by itself. */
function simple(reading: Reading, record: DxfRecord, unitMm: number): void {
  const { drawn, place } = reading;
  const { type } = record;
  const name = place.named(textOf(record, 8));
  const fine = fineMm(reading, unitMm);
  const whole = type === 'CIRCLE';
  if (type === 'LINE') {
    const ends = [placeOf(record, 10), placeOf(record, 11)];
    // A line is where it is, however its plane is turned.
    drawn.line(name, ends.map(onSheet(reading, unitMm, 1)), false, layerOf(reading, record));
  } else if (type === 'LWPOLYLINE') {
    const closed = isClosed(record);
    draw(reading, record, polyline(ownVertices(record), closed, fine), closed, unitMm);
  } else if (type === 'SPLINE') {
    const read = spline(record, fine);
    // Its places are where they are, as those of a line.
    if (read.ok) {
      drawn.line(
        name,
        read.points.map(onSheet(reading, unitMm, 1)),
        false,
        layerOf(reading, record),
      );
    } else if (read.why === 'unknown') unknown(reading, record);
    else drawn.problem({ kind: 'no-number', name });
  } else if (whole || type === 'ARC') {
    const points = arcOf(record, whole, fine);
    if (points) draw(reading, record, points, whole, unitMm);
    else drawn.problem({ kind: 'no-number', name });
  }
}

const onSheet =
  ({ place: { matrix } }: Reading, unitMm: number, side: number) =>
  ([x, y]: Point): Point => {
    const [u, v] = at(matrix, [side * x, y]);
    return [u * unitMm, v * unitMm];
  };

/** Lines are joined within their layer, and within the block as it was put. */
const layerOf = ({ place }: Reading, record: DxfRecord) => place.key + textOf(record, 8);

/** Draws what lies in a plane: of the sheet, or of its back, where x runs the other way. */
function draw(
  reading: Reading,
  record: DxfRecord,
  points: readonly Point[],
  closed: boolean,
  unitMm: number,
): void {
  const side = sideOf(record);
  if (side === undefined) {
    unknown(reading, record);
    return;
  }
  const name = reading.place.named(textOf(record, 8));
  const placed = points.map(onSheet(reading, unitMm, side));
  reading.drawn.line(name, placed, closed, layerOf(reading, record));
}
