import type { Field, Places } from './field.ts';
import { searchIn } from './search.ts';

/** A pair that still collides counts more from round to round, by how deep it does. */
const GROWS_LEAST = 1.2;
const GROWS_MOST = 2;
/** What a pair that is apart loses of the weight it had gained. */
const FADES = 0.95;
/** A round counts as a gain when it takes at least this share off what is left. */
const GAIN = 0.98;
/** Depths in all that count as none, as a share of the width. */
const NONE = 1e-10;

/** A lay with what still lies in each other. */
export interface Snapshot extends Places {
  overlap: number;
}

export interface Patience {
  /** Rounds without a gain after which the best of the try is gone back to. */
  rounds: number;
  /** How often it is gone back to before the try is given up. */
  tries: number;
}

/**
 * What takes pieces that lie in each other apart (guided local search): in turn each that collides
 * goes to the place of least weighted depth, and pairs that stay in collision weigh more.
 */
export function separatorOf(field: Field, random: () => number) {
  const { problem, x, y, shape } = field;
  const count = problem.pieces.length;
  const depths = new Float64Array(count * count);
  const factors = factorsOf(field);
  const weights = new Float64Array(count * count);
  const costs = new Float64Array(count * count);
  const search = searchIn(field, random);
  const best: Snapshot = {
    x: new Float64Array(count),
    y: new Float64Array(count),
    shape: new Int32Array(count),
    overlap: Infinity,
  };
  const order = new Int32Array(count);

  const save = (overlap: number) => {
    best.x.set(x);
    best.y.set(y);
    best.shape.set(shape);
    best.overlap = overlap;
  };
  const load = () => {
    x.set(best.x);
    y.set(best.y);
    shape.set(best.shape);
  };
  const measure = (piece: number) => {
    for (let other = 0; other < count; other++) {
      if (other === piece) continue;
      const deep = field.depthOf(piece, other);
      depths[piece * count + other] = deep;
      depths[other * count + piece] = deep;
    }
  };
  const overlap = () => {
    let sum = 0;
    for (let i = 0; i < problem.moving; i++) {
      for (let j = i + 1; j < count; j++) sum += depths[i * count + j]!;
    }
    return sum;
  };
  const measureAll = () => {
    for (let piece = 0; piece < problem.moving; piece++) measure(piece);
    return overlap();
  };

  /** Those that collide, in an order drawn anew each round. */
  const collide = (): number => {
    let n = 0;
    for (let i = 0; i < problem.moving; i++) {
      for (let j = 0; j < count; j++) {
        if (depths[i * count + j]! <= 0) continue;
        order[n++] = i;
        break;
      }
    }
    for (let k = n - 1; k > 0; k--) {
      const other = (random() * (k + 1)) | 0;
      const held = order[k]!;
      order[k] = order[other]!;
      order[other] = held;
    }
    return n;
  };

  const move = (piece: number, length: number) => {
    let present = 0;
    for (let j = 0; j < count; j++) {
      present += depths[piece * count + j]! * costs[piece * count + j]!;
    }
    if (present <= 0) return;
    const found = search(piece, length, costs, present);
    if (found.cost >= present) return;
    x[piece] = found.x;
    y[piece] = found.y;
    shape[piece] = found.shape;
    measure(piece);
  };

  const weigh = () => {
    let most = 0;
    for (let pair = 0; pair < depths.length; pair++) if (depths[pair]! > most) most = depths[pair]!;
    for (let i = 0; i < count; i++) {
      for (let j = i + 1; j < count; j++) {
        const pair = i * count + j;
        const deep = depths[pair]!;
        // Of thousands of pairs nearly all are apart, and were so before.
        if (deep <= 0 && weights[pair] === 1) continue;
        const grown = GROWS_LEAST + (GROWS_MOST - GROWS_LEAST) * (deep / most);
        const weight = weights[pair]! * (deep > 0 ? grown : FADES);
        weights[pair] = Math.max(1, weight);
        costs[pair] = Math.max(1, weight) * factors[pair]!;
        costs[j * count + i] = costs[pair]!;
      }
    }
  };

  /** Leaves the best lay found in the field: with nothing overlapping, when it says true. */
  const separate = (length: number, patience: Patience, goesOn: () => boolean): boolean => {
    const none = NONE * problem.width;
    let left = measureAll();
    weights.fill(1);
    costs.set(factors);
    save(left);
    for (let tries = 0; tries < patience.tries && left > none; tries++) {
      let idle = 0;
      while (idle < patience.rounds) {
        if (!goesOn()) {
          load();
          return best.overlap <= none;
        }
        const colliding = collide();
        for (let k = 0; k < colliding; k++) move(order[k]!, length);
        left = overlap();
        idle = left < best.overlap * GAIN ? 0 : idle + 1;
        if (left < best.overlap) save(left);
        if (left <= none) return true;
        weigh();
      }
      load();
      left = measureAll();
    }
    return left <= none;
  };

  return { separate, best };
}

/** Large pieces count more than small ones: by the square root of the smaller area of a pair. */
function factorsOf({ problem }: Field): Float64Array {
  const count = problem.pieces.length;
  const side = problem.pieces.map((kind) => Math.sqrt(problem.kinds[kind]!.area) / problem.width);
  const factors = new Float64Array(count * count);
  side.forEach((one, i) => {
    side.forEach((other, j) => {
      factors[i * count + j] = Math.min(one, other);
    });
  });
  return factors;
}
