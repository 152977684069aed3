import { halfStitches, middleStart, waysOver } from './lacing-halves.ts';
import type { LacingInput } from './lacing-input.ts';
import type { Strand } from './lacing-kinds.ts';
import type { Repeat } from './lacing-repeat.ts';
import type { ToCut } from './lacing-to-cut.ts';

/**
 * - `off-published`: geometry is 10 % or more off what is published, less or more.
 * - `cut-short`: the stitches are no multiple of the repeat of one's own.
 * - `beyond`: steps of one's own that go so many pitches past an end of the row.
 */
export type LacingDoubt =
  | { kind: 'off-published'; off: number; less: boolean }
  | { kind: 'cut-short'; advance: number; stitches: number }
  | { kind: 'beyond'; end: 'first' | 'last'; by: number };

/** From so far off what is published, it is said. */
const FAR_OFF = 0.1;
/** What dividing may leave over. */
const NOISE = 1e-9;

export function doubtsOf(
  input: LacingInput,
  [strand]: readonly Strand[],
  { off, by }: Pick<ToCut, 'off' | 'by'>,
): LacingDoubt[] {
  const doubts: LacingDoubt[] = [];
  if (off !== undefined && off >= FAR_OFF - NOISE) {
    doubts.push({ kind: 'off-published', off, less: by === 'published' });
  }
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
