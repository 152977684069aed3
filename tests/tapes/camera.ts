/** A phone or webcam over a bench: `pixels` of focal length at `distance` mm, leaning `tilt`. */
export interface CameraSpec {
  readonly width: number;
  readonly height: number;
  readonly focal: number;
  readonly distance: number;
  /** Degrees from looking straight down, and to which side. */
  readonly tilt: number;
  readonly towards: number;
  /** Barrel distortion: share by which a ray at the corner is seen closer to the middle. */
  readonly barrel: number;
}

/** The bench is z = 0, x and y in mm with (0, 0) in the middle of the picture. */
export interface Camera {
  readonly spec: CameraSpec;
  /** The camera's own place over the bench: x, y, and its height, mm. */
  readonly eye: readonly [number, number, number];
  /** Where a point `height` mm above the bench is seen. */
  see(x: number, y: number, height: number): { x: number; y: number };
  /** The point of the bench seen at a place in the picture. */
  meet(x: number, y: number): [number, number];
}

export function cameraOf(spec: CameraSpec): Camera {
  const turn = leaning(spec);
  const [r0, r1, r2] = turn;
  const { focal, distance } = spec;
  const middle = [spec.width / 2, spec.height / 2] as const;
  const corner = Math.hypot(...middle);
  const flat = [r0[0], r0[1], 0, r1[0], r1[1], 0, r2[0], r2[1], distance];
  const back = inverse(flat);
  const dot = (row: Row, x: number, y: number, z: number) => row[0] * x + row[1] * y + row[2] * z;
  return {
    spec,
    eye: [-r2[0] * distance, -r2[1] * distance, r2[2] * distance],
    see(x, y, height) {
      const z = dot(r2, x, y, -height) + distance;
      const u = (focal * dot(r0, x, y, -height)) / z;
      const v = (focal * dot(r1, x, y, -height)) / z;
      const shrink = seenCloser(Math.hypot(u, v) / corner, spec.barrel);
      return { x: middle[0] + u * shrink, y: middle[1] + v * shrink };
    },
    meet(x, y) {
      const u = x - middle[0];
      const v = y - middle[1];
      const grow = 1 + (spec.barrel * (u * u + v * v)) / (corner * corner);
      const [a, b] = [(u * grow) / focal, (v * grow) / focal];
      const w = back[6]! * a + back[7]! * b + back[8]!;
      return [
        (back[0]! * a + back[1]! * b + back[2]!) / w,
        (back[3]! * a + back[4]! * b + back[5]!) / w,
      ];
    },
  };
}

type Row = readonly [number, number, number];

/** Turn about an axis in the bench, so that tilting doesn't turn the picture. */
function leaning({ tilt, towards }: CameraSpec): [Row, Row, Row] {
  const [t, a] = [(tilt * Math.PI) / 180, (towards * Math.PI) / 180];
  const [ct, st, ca, sa] = [Math.cos(t), Math.sin(t), Math.cos(a), Math.sin(a)];
  return [
    [ca * ca * ct + sa * sa, ca * sa * (ct - 1), ca * st],
    [ca * sa * (ct - 1), sa * sa * ct + ca * ca, sa * st],
    [-ca * st, -sa * st, ct],
  ];
}

/** Solves r·(1 + barrel·r²) = straight for r, as a share of `straight`, by Newton's method. */
function seenCloser(straight: number, barrel: number): number {
  if (straight === 0 || barrel === 0) return 1;
  let r = straight;
  for (let i = 0; i < 6; i++) {
    r -= (r * (1 + barrel * r * r) - straight) / (1 + 3 * barrel * r * r);
  }
  return r / straight;
}

function inverse(m: readonly number[]): number[] {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 0] = m;
  const [p, q, r] = [e * i - f * h, f * g - d * i, d * h - e * g];
  const size = a * p + b * q + c * r;
  const parts = [p, c * h - b * i, b * f - c * e, q, a * i - c * g, c * d - a * f, r];
  return [...parts, b * g - a * h, a * e - b * d].map((part) => part / size);
}
