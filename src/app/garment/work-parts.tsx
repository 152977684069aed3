import { useMemo } from 'preact/hooks';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import type { Drawing } from '../../calculation/drawing.ts';
import { CALCULATIONS, DRAWINGS } from '../../calculations/list.ts';
import { useLoaded } from '../../controls/use-loaded.ts';
import type { State } from '../../garment/actions/state.ts';
import { readHome } from '../../garment/record/home.ts';
import { DrawnHere } from '../../screens/garment/works/drawn-here.tsx';

/** What is fetched of a calculation that isn't one. */
const NONE = () => undefined;

/** A drawing that is on its way. */
const AWAITED = 'awaited' as const;

/** The page and the drawing of a work's calculation, as far as they are there. */
export function useWorkParts({ answer }: State, work: string) {
  const calculation = answer.works.get(work)?.work.calculation ?? '';
  const page = useLoaded<Calculation | undefined>(partOf(CALCULATIONS, calculation));
  const drawing = useLoaded<Drawing | undefined>(partOf(DRAWINGS, calculation));
  const isAwaited = drawing.state === 'loading' && Object.hasOwn(DRAWINGS, calculation);
  return {
    page: page.state === 'here' ? page.value : undefined,
    drawing: drawing.state === 'here' ? drawing.value : isAwaited ? AWAITED : undefined,
  };
}

function partOf<Part>(
  parts: Readonly<Record<string, () => Promise<Part>>>,
  id: string,
): () => Promise<Part> | undefined {
  return Object.hasOwn(parts, id) ? (parts[id] ?? NONE) : NONE;
}

/** The drawing of the work a step belongs to. */
export function useDrawing(state: State, home: string, bench: Bench) {
  const { id, side } = readHome(home);
  const { drawing } = useWorkParts(state, id);
  return useMemo(
    () =>
      drawing &&
      drawing !== AWAITED && <DrawnHere {...{ state, drawing, bench, side }} work={id} />,
    [state, drawing, bench, id, side],
  );
}
