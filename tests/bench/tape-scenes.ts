import { appendFileSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { readTape } from '../../src/tape/reader/read-tape.ts';
import { readingAt } from '../../src/tape/scales/read-at.ts';
import type { TapeReading } from '../../src/tape/scales/tape-reading.ts';
import type { nodeEngine } from '../tapes/node-engine.ts';
import { type Scene, sceneList } from '../tapes/scene.ts';

/** Wrong by more than this is confidently wrong. */
export const WRONG_MM = 1;

/** One place of a scene that was read: how far off, and how far off it was said to be at most. */
export interface ReadPoint {
  readonly error: number;
  readonly stated: number;
  /** In the middle of a scale's lines, not anywhere on the tape or beside it. */
  readonly onScale: boolean;
}

/** What came of one scene. */
export interface SceneOutcome {
  readonly kind: string;
  readonly seed: number;
  readonly tilt: number;
  readonly expect: string;
  readonly outcome: string;
  /** What was asked, where something was: which line, or which unit. */
  readonly question: string | undefined;
  readonly points: readonly ReadPoint[];
  readonly refused: Readonly<Record<string, number>>;
  readonly asked: number;
  readonly ms: number;
}

type Engine = Awaited<ReturnType<typeof nodeEngine>>;

/** Reads scenes of every kind (or of one) and hands each outcome on, also as a line of JSON in `folder`. */
export async function readScenes(
  count: number,
  seed: number,
  only: string,
  engine: Engine,
  folder: string,
): Promise<SceneOutcome[]> {
  mkdirSync(folder, { recursive: true });
  const lines = join(folder, `scenes-${seed}.jsonl`);
  rmSync(lines, { force: true });
  const outcomes: SceneOutcome[] = [];
  for (const { kind, seed: own, make } of sceneList(count, seed)) {
    if (only && !kind.startsWith(only)) continue;
    const scene = make();
    const start = performance.now();
    const reading = await readTape(scene, engine.readPage);
    const outcome = outcomeOf(scene, reading, kind, own, performance.now() - start);
    outcomes.push(outcome);
    appendFileSync(lines, `${JSON.stringify(outcome)}\n`);
  }
  return outcomes;
}

function outcomeOf(
  scene: Scene,
  reading: TapeReading,
  kind: string,
  seed: number,
  ms: number,
): SceneOutcome {
  const points: ReadPoint[] = [];
  const refused: Record<string, number> = {};
  for (const { x, y, mm, onScale } of scene.points) {
    // Scenes count from the corner of the first pixel, the reader from its middle.
    const told = readingAt(reading, { x: x - 0.5, y: y - 0.5 });
    if (!told.ok) {
      if (onScale) refused[told.reason] = (refused[told.reason] ?? 0) + 1;
      continue;
    }
    // A place off one scale may lie on another, and then that one is told, not this.
    if (!onScale && belongsElsewhere(scene, x, y, told.mm)) continue;
    points.push({ error: told.mm - mm, stated: told.uncertaintyMm, onScale });
  }
  for (const { x, y, says } of scene.beside) {
    const told = readingAt(reading, { x: x - 0.5, y: y - 0.5 });
    if (!told.ok || says.length === 0) continue;
    const errors = says
      .map((mm) => told.mm - mm)
      .sort((one, other) => Math.abs(one) - Math.abs(other));
    points.push({ error: errors[0] ?? Number.NaN, stated: told.uncertaintyMm, onScale: false });
  }
  const asked = scene.points.filter(({ onScale }) => onScale).length;
  return {
    kind,
    seed,
    tilt: scene.tiltDegrees,
    expect: scene.truth.expect,
    outcome: reading.outcome,
    question: reading.question?.kind,
    points,
    refused,
    asked,
    ms,
  };
}

/** Whether what was told is right for any scale of the scene at that place. */
function belongsElsewhere(scene: Scene, x: number, y: number, mm: number): boolean {
  return scene.truth.scales.some((scale) => {
    if (mm < scale.visibleFromMm - 0.5 || mm > scale.visibleToMm + 0.5) return false;
    const at = scale.pointAt(mm);
    const near = scale.pointAt(mm + 1);
    const pxPerMm = Math.hypot(near.x - at.x, near.y - at.y);
    const [alongX, alongY] = [(near.x - at.x) / pxPerMm, (near.y - at.y) / pxPerMm];
    const along = ((x - at.x) * alongX + (y - at.y) * alongY) / pxPerMm;
    return Math.abs(along) < WRONG_MM;
  });
}
