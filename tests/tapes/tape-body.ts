import type { Camera } from './camera.ts';
import type { TapeSpec } from './tape-spec.ts';

/** A tape's middle line, followed in short steps over the bench. */
export interface TapeBody {
  readonly spec: TapeSpec;
  /** Where a place on the tape is seen; `across` from its low edge, mm. */
  see(s: number, across: number): { x: number; y: number };
  /** The place on the tape seen where the camera meets the bench at (x, y); the tape endless. */
  placeAt(x: number, y: number): [number, number];
}

const STEP = 0.5;
const MARGIN = 60;
/** Beyond this from a tape nobody asks where on it a place would lie, mm. */
const NEAR = 45;
const FAR = 1e6;

interface Path {
  readonly from: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly angle: Float64Array;
}

export function tapeBody(spec: TapeSpec, camera: Camera): TapeBody {
  const { lay, width } = spec;
  const path = followed(spec);
  const [eyeX, eyeY, eyeZ] = camera.eye;
  const heightOf = (s: number, off: number) => {
    const hollow = (lay.hollow ?? 0) * ((2 * off) / width) ** 2;
    return (lay.lift?.(s) ?? 0) + hollow + Math.abs(off * Math.sin(lay.twist?.(s) ?? 0));
  };
  const flat = !lay.lift && !lay.hollow && !lay.twist;
  return {
    spec,
    see(s, across) {
      const off = across - width / 2;
      const [x, y, angle] = at(path, s);
      const out = off * Math.cos(lay.twist?.(s) ?? 0);
      return camera.see(x - out * Math.sin(angle), y + out * Math.cos(angle), heightOf(s, off));
    },
    placeAt(x, y) {
      const [start, away] = closestKnot(path, x, y);
      if (away > width + NEAR) return [start, FAR];
      let [s, out] = nearest(path, x, y, start);
      if (flat) return [s, out + width / 2];
      for (let i = 0; i < 4; i++) {
        const off = out / Math.cos(lay.twist?.(s) ?? 0);
        const share = heightOf(s, Math.max(-width, Math.min(width, off))) / eyeZ;
        [s, out] = nearest(path, x + share * (eyeX - x), y + share * (eyeY - y), s);
      }
      return [s, out / Math.cos(lay.twist?.(s) ?? 0) + width / 2];
    },
  };
}

/** Walks the middle line both ways from s = 0; lifting off the bench shortens what is seen. */
function followed({ lay, from, to }: TapeSpec): Path {
  const first = Math.floor((Math.min(0, from) - MARGIN) / STEP);
  const count = Math.ceil((Math.max(0, to) + MARGIN) / STEP) - first + 1;
  const [x, y, angle] = [0, 1, 2].map(() => new Float64Array(count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  x[-first] = lay.x;
  y[-first] = lay.y;
  angle[-first] = lay.angle;
  const bend = (s: number) => lay.bend?.(Math.min(to, Math.max(from, s))) ?? 0;
  const walk = (i: number, way: 1 | -1) => {
    const s = (first + i + way / 2) * STEP;
    const rise = lay.lift ? (lay.lift(s + STEP / 2) - lay.lift(s - STEP / 2)) / STEP : 0;
    const level = way * STEP * Math.sqrt(Math.max(0.05, 1 - rise * rise));
    const next = angle[i]! + way * bend(s) * STEP;
    const mean = (angle[i]! + next) / 2;
    angle[i + way] = next;
    x[i + way] = x[i]! + level * Math.cos(mean);
    y[i + way] = y[i]! + level * Math.sin(mean);
  };
  for (let i = -first; i < count - 1; i++) walk(i, 1);
  for (let i = -first; i > 0; i--) walk(i, -1);
  return { from: first * STEP, x, y, angle };
}

/** Place and direction at s; beyond the ends straight on. */
function at(path: Path, s: number): [number, number, number] {
  const exact = (s - path.from) / STEP;
  const i = Math.min(path.x.length - 2, Math.max(0, Math.floor(exact)));
  const share = exact - i;
  const between = (list: Float64Array) => list[i]! + share * (list[i + 1]! - list[i]!);
  const turn = Math.min(1, Math.max(0, share)) * (path.angle[i + 1]! - path.angle[i]!);
  return [between(path.x), between(path.y), path.angle[i]! + turn];
}

/** The s whose cross line passes through (x, y), and how far out on it, by Newton's method. */
function nearest(path: Path, x: number, y: number, start: number): [number, number] {
  let s = start;
  let out = 0;
  for (let i = 0; i < 3; i++) {
    const [cx, cy, angle] = at(path, s);
    const [c, sn] = [Math.cos(angle), Math.sin(angle)];
    out = (y - cy) * c - (x - cx) * sn;
    const bend = (at(path, s + STEP)[2] - at(path, s - STEP)[2]) / (2 * STEP);
    const along = (x - cx) * c + (y - cy) * sn;
    s += along / Math.max(0.3, 1 - bend * out);
  }
  const [cx, cy, angle] = at(path, s);
  out = (y - cy) * Math.cos(angle) - (x - cx) * Math.sin(angle);
  return [s, out];
}

function closestKnot(path: Path, x: number, y: number): [s: number, away: number] {
  const stride = 16;
  let best = Infinity;
  let found = 0;
  for (let i = 0; i < path.x.length; i += stride) {
    const away = (path.x[i]! - x) ** 2 + (path.y[i]! - y) ** 2;
    if (away < best) {
      best = away;
      found = i;
    }
  }
  return [path.from + found * STEP, Math.sqrt(best)];
}
