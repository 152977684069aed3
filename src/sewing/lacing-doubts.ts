import { halfStitches, middleStart, waysOver } from './lacing-halves.ts';
import type { LacingInput } from './lacing-input.ts';
import { type LacingKind, PUBLISHED, type Strand } from './lacing-kinds.ts';
import type { Repeat } from './lacing-repeat.ts';

/**
 * - `off-published`: more than 40 % off what is published.
 * - `cut-short`: the stitches are no multiple of the repeat of one's own.
 * - `beyond`: steps of one's own that go so many pitches past an end of the row.
 */
export type LacingDoubt =
  | { kind: 'off-published'; off: number }
  | { kind: 'cut-short'; advance: number; stitches: number }
  | { kind: 'beyond'; end: 'first' | 'last'; by: number };

/** Farther off what is published than this, it is said. */
const FAR_OFF = 0.4;

/** Nothing within the published range, otherwise how far from its nearer end, in parts of that. */
export function offPublished(kind: LacingKind, factor: number): number | undefined {
  const published = PUBLISHED[kind];
  if (!published) return undefined;
  const [least, most] = published.value;
  if (factor < least) return (least - factor) / least;
  return factor > most ? (factor - most) / most : 0;
}

export function doubtsOf(
  input: LacingInput,
  [strand]: readonly Strand[],
  off: number | undefined,
): LacingDoubt[] {
  const doubts: LacingDoubt[] = [];
  if (off !== undefined && off > FAR_OFF) doubts.push({ kind: 'off-published', off });
  return input.kind === 'own' && strand ? [...doubts, ...ownDoubts(input, strand.repeat)] : doubts;
}

function ownDoubts(input: LacingInput, repeat: Repeat): LacingDoubt[] {
  const { advance } = repeat;
  const start = middleStart(input);
  const last = input.holes - 1;
  const stitches = (start ? halfStitches(start, input.holes) : [last]).find(
    (count) => count % advance !== 0,
  );
  const alongs = waysOver(repeat, input)
    .flat()
    .map(({ along }) => along);
  const past = { first: -smallest(alongs), last: -smallest(alongs.map((along) => last - along)) };
  return [
    ...(stitches === undefined ? [] : [{ kind: 'cut-short' as const, advance, stitches }]),
    ...(['first', 'last'] as const).flatMap((end) =>
      past[end] > 0 ? [{ kind: 'beyond' as const, end, by: past[end] }] : [],
    ),
  ];
}

/** Of more numbers than fit in one call. */
function smallest(values: readonly number[]): number {
  return values.reduce((least, value) => Math.min(least, value));
}
