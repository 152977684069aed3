import { useMemo } from 'preact/hooks';
import { layPlacesWords } from '#words/garment/garment-lay-places-words.ts';
import { laySheetWords as words } from '#words/garment/lay-sheet-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { onTape } from '../../calculation/tape-text.ts';
import type { LayJob } from '../../drawing/lay-job.ts';
import { exactLength, inches, mm, toMm } from '../../lengths/length.ts';
import { LaySheet } from '../../screens/garment/sheet/lay-sheet.tsx';
import type { LaySums } from '../../screens/lay/lay-found.tsx';
import type { LayShown } from '../../screens/lay/lay-shown.ts';
import { placeSaid } from '../../screens/lay/place-said.ts';
import { PAPER_SERVICES } from '../paper/paper-services.ts';

interface Props {
  lay: LayShown;
  sums: LaySums;
  /** Of the garment, and of the cloth. */
  names: readonly [garment: string, cloth: string];
  bench: Bench;
  onBack: () => void;
}

/** How far apart marks may stand along an edge: whole tens of centimetres, or inches and feet. */
const METRIC = [10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];
const INCHES = [1, 2, 6, 12, 36, 72, 180, 360].map((of) => toMm(inches(of)));

/** A lay that is shown as a job for paper. */
function jobOf({ lay, sums, names, bench }: Omit<Props, 'onBack'>): LayJob {
  const { width, folded } = lay;
  const whole = onTape(exactLength(mm(folded ? 2 * width : width)), bench);
  return {
    title: words.of(...names),
    under: [
      folded ? words.folded(whole) : words.open(whole),
      [
        words.takes(sums.takes ?? sums.most),
        ...(sums.takes === undefined ? [] : [words.buy(sums.most)]),
      ].join(' '),
      words.found,
    ],
    ...{ width, length: lay.length, folded, flaws: lay.flaws },
    pieces: lay.pieces.map((piece, at) => ({
      outline: piece.outline,
      label: String(at + 1),
      heading: layPlacesWords.named(at + 1, piece.name),
      places: placeSaid(piece, lay, bench),
    })),
    steps: bench.unit === 'in' ? INCHES : METRIC,
  };
}

/** The lay of a cloth on paper. */
export function LaySheetPlace({ onBack, ...given }: Props) {
  const { lay, sums, names, bench } = given;
  // What was written of it stays as long as nothing of it is otherwise.
  const job = useMemo(() => jobOf(given), [JSON.stringify([lay, sums, names]), bench]);
  return <LaySheet {...{ job, bench, onBack }} services={PAPER_SERVICES} />;
}
