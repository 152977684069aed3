import type { Field } from './field.ts';
import { latticeOf, onLattice, type Range, rangeOf } from './lattice.ts';
import { oneOf } from './random.ts';

/** How many places are tried anywhere in the strip, and round the present one. */
const ANYWHERE = 24;
const NEARBY = 8;
/** How far round the present place, as a share of the piece's own size. */
const NEARBY_SPAN = 0.6;
/** A place is bettered by so many steps at the most, each of so many hits looked at. */
const STEPS = 8;
const HITS = 3;
/** How far a step may lead, as a share of the piece's own size. */
const REACH = 0.5;
/** Outlines remembered while a place is bettered: two of them cross at a corner to lie in. */
const LINES = 6;
/** A place on an outline lies this far outside it, as a share of the width: touching is free. */
const BESIDE = 1e-8;
/** A direction nearer to an axis than this doesn't reach it. */
const ALONG = 1e-3;

/** The cost of no place. */
const NOWHERE = 1e300;

/** The best place found for a piece. */
export interface Found {
  x: number;
  y: number;
  shape: number;
  cost: number;
}

/**
 * What looks for the place of least cost of one piece in a strip of a length: places drawn at
 * random, the best of them bettered by stepping onto the outlines of what it hits.
 */
export function searchIn(field: Field, random: () => number) {
  const { problem, io, x, y, shape } = field;
  const range: Range = { x0: 0, y0: 0, x1: 0, y1: 0 };
  const found: Found = { x: 0, y: 0, shape: 0, cost: 0 };
  const better = betterIn(field, random, range);
  /** The best place drawn so far, and its cost. */
  const drawn = new Float64Array(3);

  const sample = (px: number, py: number) => {
    const placed = better.snapped(px, py);
    if (!placed) return;
    io[2] = drawn[2]!;
    field.cost();
    if (io[3]! >= drawn[2]!) return;
    drawn[0] = io[0]!;
    drawn[1] = io[1]!;
    drawn[2] = io[3]!;
  };

  const trySamples = (piece: number, width: number, height: number) => {
    drawn[2] = NOWHERE;
    for (let k = 0; k < ANYWHERE; k++) {
      const px = range.x0 + random() * (range.x1 - range.x0);
      sample(px, range.y0 + random() * (range.y1 - range.y0));
    }
    for (let k = 0; k < NEARBY; k++) {
      const px = x[piece]! + (random() - 0.5) * width * NEARBY_SPAN;
      sample(px, y[piece]! + (random() - 0.5) * height * NEARBY_SPAN);
    }
  };

  const take = (px: number, py: number, own: number) => {
    const cost = better.from(px, py);
    if (!(cost < found.cost)) return;
    found.x = better.place[0]!;
    found.y = better.place[1]!;
    found.shape = own;
    found.cost = cost;
  };

  const tryShape = (piece: number, own: number, length: number, weights: Float64Array) => {
    const { box } = problem.shapes[own]!;
    if (!rangeOf(problem, problem.shapes[own]!, length, range)) return;
    better.of(own);
    field.prepare(piece, own, weights);
    trySamples(piece, box.x1 - box.x0, box.y1 - box.y0);
    if (own === shape[piece]) take(x[piece]!, y[piece]!, own);
    if (found.cost > 0 && drawn[2]! < NOWHERE) take(drawn[0]!, drawn[1]!, own);
  };

  return (piece: number, length: number, weights: Float64Array, present: number): Found => {
    const own = shape[piece]!;
    found.x = x[piece]!;
    found.y = y[piece]!;
    found.shape = own;
    found.cost = present;
    tryShape(piece, own, length, weights);
    // One of the other ways it may lie: in the next round it may be another, and more rounds are had.
    const { shapes } = problem.kinds[problem.pieces[piece]!]!;
    if (found.cost === 0 || shapes.length < 2) return found;
    const other = shapes[oneOf(random, shapes.length - 1)]!;
    tryShape(piece, other === own ? shapes.at(-1)! : other, length, weights);
    return found;
  };
}

/** What betters a place step by step. */
function betterIn(field: Field, random: () => number, range: Range) {
  const { problem, io } = field;
  const window: Range = { x0: 0, y0: 0, x1: 0, y1: 0 };
  const place = new Float64Array(2);
  const offers = offersIn(field, random);
  let lattice = { stepX: 0, stepY: 0, startX: 0, startY: 0 };
  let [reachX, reachY, ways] = [0, 0, 1];

  const of = (own: number) => {
    const shape = problem.shapes[own]!;
    lattice = latticeOf(problem, shape);
    ways = (lattice.stepX > 0 ? 2 : 1) * (lattice.stepY > 0 ? 2 : 1);
    reachX = REACH * (shape.box.x1 - shape.box.x0);
    reachY = REACH * (shape.box.y1 - shape.box.y0);
  };

  /** Puts the place of the lattice beside this one into `io`, held in the bounds. */
  const put = (px: number, py: number, way: number, bounds: Range): boolean => {
    const { stepX, stepY, startX, startY } = lattice;
    const upX = (way & 1) as 0 | 1;
    const upY = (stepX > 0 ? way >> 1 : way & 1) as 0 | 1;
    io[0] = onLattice(px, stepX, startX, bounds.x0, bounds.x1, upX);
    io[1] = onLattice(py, stepY, startY, bounds.y0, bounds.y1, upY);
    return !Number.isNaN(io[0]) && !Number.isNaN(io[1]);
  };

  const openWindow = (px: number, py: number) => {
    window.x0 = Math.max(range.x0, px - reachX);
    window.x1 = Math.min(range.x1, px + reachX);
    window.y0 = Math.max(range.y0, py - reachY);
    window.y1 = Math.min(range.y1, py + reachY);
    field.within(window.x0, window.y0, window.x1, window.y1);
  };

  /** The best of the places offered into `place`. */
  const bestOffer = (count: number, cost: number): number => {
    let least = cost;
    for (let k = 0; k < count && least > 0; k += 2) {
      for (let way = 0; way < ways; way++) {
        if (!put(offers.places[k]!, offers.places[k + 1]!, way, window)) continue;
        io[2] = least;
        field.cost();
        if (io[3]! >= least) continue;
        least = io[3]!;
        place[0] = io[0]!;
        place[1] = io[1]!;
      }
    }
    return least;
  };

  const from = (px: number, py: number): number => {
    place[0] = px;
    place[1] = py;
    openWindow(px, py);
    io[0] = px;
    io[1] = py;
    field.probe();
    let cost = io[3]!;
    offers.begin();
    for (let step = 0; step < STEPS && cost > 0; step++) {
      const least = bestOffer(offers.around(place[0]!, place[1]!), cost);
      if (least >= cost * (1 - 1e-6)) break;
      cost = least;
      io[0] = place[0]!;
      io[1] = place[1]!;
      if (cost > 0) field.probe();
    }
    return cost;
  };

  return { of, from, place, snapped: (px: number, py: number) => put(px, py, 0, range) };
}

/** The places worth a step: onto the outline of what is hit, and onto two outlines at once. */
function offersIn({ problem, hits }: Field, random: () => number) {
  const beside = BESIDE * problem.width;
  const [lineX, lineY, lineAt] = [0, 0, 0].map(() => new Float64Array(LINES)) as Lines;
  const places = new Float64Array(2 * HITS * (3 + LINES));
  let lines = 0;
  let count = 0;
  const offer = (x: number, y: number) => {
    places[count++] = x;
    places[count++] = y;
  };
  const onto = (x: number, y: number, hit: number) => {
    const [ux, uy] = [hits.outX[hit]!, hits.outY[hit]!];
    const deep = hits.depth[hit]! + beside;
    const at = ux * x + uy * y + deep;
    offer(x + ux * deep, y + uy * deep);
    if (Math.abs(ux) > ALONG) offer(x + deep / ux, y);
    if (Math.abs(uy) > ALONG) offer(x, y + deep / uy);
    const slot = lines < LINES ? lines++ : (random() * LINES) | 0;
    for (let k = 0; k < lines; k++) {
      const turn = ux * lineY[k]! - uy * lineX[k]!;
      if (k === slot || Math.abs(turn) < ALONG) continue;
      offer((at * lineY[k]! - uy * lineAt[k]!) / turn, (ux * lineAt[k]! - at * lineX[k]!) / turn);
    }
    lineX[slot] = ux;
    lineY[slot] = uy;
    lineAt[slot] = at;
  };
  /** How many numbers stand in `places`: two a place. */
  const around = (x: number, y: number): number => {
    count = 0;
    for (let hit = 0; hit < hits.count && hit < HITS; hit++) onto(x, y, hit);
    return count;
  };
  const begin = () => {
    lines = 0;
  };
  return { places, around, begin };
}

type Lines = [Float64Array, Float64Array, Float64Array];
