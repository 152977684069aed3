import { type SceneOutcome, WRONG_MM } from './tape-scenes.ts';

/** Below this tilt a scene has to be read more surely. */
const SMALL_TILT = 30;

/** A scene counts as read when most of its places on a scale were told. */
export function isRead({ outcome, points, asked }: SceneOutcome): boolean {
  return outcome === 'read' && points.filter(({ onScale }) => onScale).length >= 0.5 * asked;
}

/** How many of its places were told wrong. */
export function wrongIn({ points }: SceneOutcome): number {
  return points.filter(({ error }) => Math.abs(error) > WRONG_MM).length;
}

/** The figures of a run of scenes, by kind and over all, as lines of text. */
export function reportOf(outcomes: readonly SceneOutcome[]): string {
  const lines: string[] = [];
  for (const kind of new Set(outcomes.map((one) => one.kind))) {
    const own = outcomes.filter((one) => one.kind === kind);
    const count = (wanted: string) => own.filter(({ outcome }) => outcome === wanted).length;
    const wrong = own.filter((one) => wrongIn(one) > 0);
    const places = own.reduce((sum, { asked }) => sum + asked, 0);
    const told = own.reduce((sum, { points }) => sum + points.length, 0);
    lines.push(
      `${kind.padEnd(34)} ${own[0]?.expect.padEnd(13)} of ${own.length}: read ${own.filter(isRead).length} (${count('read')}), ask ${count('ask')}, cannot ${count('cannot')}; places ${told}/${places}${
        wrong.length > 0
          ? `  WRONG ${wrong.map((one) => `seed ${one.seed}: ${worst(one).toFixed(1)} mm ×${wrongIn(one)}`).join(', ')}`
          : ''
      }`,
    );
  }
  const wanted = outcomes.filter(({ expect }) => expect === 'read');
  const flat = wanted.filter(({ tilt }) => tilt < SMALL_TILT);
  const points = outcomes.flatMap((one) => one.points);
  const errors = points.map(({ error }) => Math.abs(error)).sort((one, other) => one - other);
  const at = (share: number) => errors[Math.floor(errors.length * share)] ?? Number.NaN;
  const covered = points.filter(({ error, stated }) => Math.abs(error) <= stated).length;
  const times = outcomes.map(({ ms }) => ms).sort((one, other) => one - other);
  lines.push(
    `scenes ${outcomes.length}, of them to be read ${wanted.length}: read ${share(wanted.filter(isRead).length, wanted.length)}, below 30° ${share(flat.filter(isRead).length, flat.length)}`,
    `asked: which line ${share(outcomes.filter(({ question }) => question === 'line').length, outcomes.length)}, which unit ${share(outcomes.filter(({ question }) => question === 'unit').length, outcomes.length)}`,
    `confidently wrong by more than 1 mm: ${outcomes.filter((one) => wrongIn(one) > 0).length} scenes`,
    `places ${points.length}: error median ${at(0.5).toFixed(3)}, 95 % ${at(0.95).toFixed(3)}, worst ${at(1 - 1e-9).toFixed(2)} mm; within what was stated ${share(covered, points.length)}`,
    `time of a reading: median ${times[times.length >> 1]?.toFixed(0)} ms, 90 % ${times[Math.floor(times.length * 0.9)]?.toFixed(0)} ms`,
  );
  return lines.join('\n');
}

function worst({ points }: SceneOutcome): number {
  return Math.max(0, ...points.map(({ error }) => Math.abs(error)));
}

function share(part: number, whole: number): string {
  return `${((100 * part) / Math.max(1, whole)).toFixed(1)} %`;
}
