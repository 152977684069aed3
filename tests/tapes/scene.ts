import { cameraOf } from './camera.ts';
import type { KindOf } from './kind.ts';
import { bentRound } from './kinds-bent.ts';
import { boxed } from './kinds-boxed.ts';
import { byOthers } from './kinds-by-others.ts';
import { covered } from './kinds-covered.ts';
import { hardOnCloth } from './kinds-hard-on-cloth.ts';
import { lookalikes } from './kinds-lookalikes.ts';
import { notTapes } from './kinds-not-tapes.ts';
import { oddRules } from './kinds-odd-rules.ts';
import { onCloth } from './kinds-on-cloth.ts';
import { prints } from './kinds-prints.ts';
import { rules } from './kinds-rules.ts';
import { runs } from './kinds-runs.ts';
import { slipped } from './kinds-slipped.ts';
import { traps } from './kinds-traps.ts';
import { unitTraps } from './kinds-unit-traps.ts';
import { randomFrom, seedFor } from './random.ts';
import { render } from './render.ts';
import type { BesidePlace, Expect, TruePoint, TrueScale } from './scene-types.ts';
import { tapeBody } from './tape-body.ts';
import { truthOf } from './truth.ts';
import { placesBeside } from './truth-beside.ts';

const KINDS = {
  ...onCloth,
  ...prints,
  ...hardOnCloth,
  ...covered,
  ...rules,
  ...oddRules,
  ...traps,
  ...unitTraps,
  ...slipped,
  ...runs,
  ...notTapes,
  ...lookalikes,
  ...boxed,
  ...bentRound,
  ...byOthers,
} as const satisfies Record<string, KindOf>;

export type SceneKind = keyof typeof KINDS;

export interface Scene {
  readonly name: string;
  readonly kind: SceneKind;
  readonly seed: number;
  readonly width: number;
  readonly height: number;
  /** Grey, upright, row after row. */
  readonly pixels: Uint8Array;
  readonly tiltDegrees: number;
  readonly truth: {
    readonly scales: readonly TrueScale[];
    readonly expect: Expect;
    readonly note: string;
  };
  readonly points: readonly TruePoint[];
  readonly beside: readonly BesidePlace[];
}

/** Every kind of scene there is; `aboutKind` says what each shows. */
export const kinds = Object.keys(KINDS) as readonly SceneKind[];

export function aboutKind(kind: SceneKind): string {
  return KINDS[kind].about;
}

/** What a scene is made from and what is true of it, before any pixel is made. */
export function planned(kind: SceneKind, seed: number) {
  const { make, expect } = KINDS[kind];
  const random = randomFrom(seedFor(kind, seed));
  const spec = make(random);
  const camera = cameraOf(spec.camera);
  const bodies = spec.tapes.map((tape) => tapeBody(tape, camera));
  const { scales, points } = truthOf(bodies, camera, spec.hiders, random);
  const beside = placesBeside(
    bodies,
    camera,
    spec.hiders,
    randomFrom(seedFor(`${kind} beside`, seed)),
  );
  return {
    spec,
    camera,
    bodies,
    random,
    points,
    beside,
    truth: { scales, expect, note: spec.note },
  };
}

/** A picture of a tape or rule with what is true of it; the same for the same kind and seed. */
export function scene(kind: SceneKind, seed: number): Scene {
  const { spec, camera, bodies, random, points, beside, truth } = planned(kind, seed);
  const { width, height, tilt } = spec.camera;
  return {
    name: `${kind} ${seed}`,
    kind,
    seed,
    width,
    height,
    pixels: render(spec, camera, bodies, random),
    tiltDegrees: tilt,
    truth,
    points,
    beside,
  };
}

/** So many scenes, of each kind in turn, from `firstSeed` on; made only when asked for. */
export function sceneList(
  count: number,
  firstSeed: number,
): { kind: SceneKind; seed: number; make: () => Scene }[] {
  return Array.from({ length: count }, (_, i) => {
    const kind = kinds[i % kinds.length] as SceneKind;
    const seed = firstSeed + Math.floor(i / kinds.length);
    return { kind, seed, make: () => scene(kind, seed) };
  });
}
