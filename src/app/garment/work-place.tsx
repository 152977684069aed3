import type { Calculation } from '../../calculation/calculation.ts';
import type { Drawing } from '../../calculation/drawing.ts';
import { CALCULATIONS, DRAWINGS } from '../../calculations/list.ts';
import { useLoaded } from '../../controls/use-loaded.ts';
import { WorkView, type WorkViewProps } from '../../screens/garment/work-view.tsx';

/** What is shown of a calculation that isn't one. */
const NONE = () => undefined;

/** A work of a garment, opened in place, once its calculation and its drawing are there. */
export function WorkPlace(props: Omit<WorkViewProps, 'page' | 'drawing'>) {
  const calculation = props.state.answer.works.get(props.work)?.work.calculation ?? '';
  const page = useLoaded<Calculation | undefined>(partOf(CALCULATIONS, calculation));
  const drawing = useLoaded<Drawing | undefined>(partOf(DRAWINGS, calculation));
  return (
    <WorkView
      {...props}
      page={page.state === 'here' ? page.value : undefined}
      drawing={drawing.state === 'here' ? drawing.value : undefined}
    />
  );
}

function partOf<Part>(
  parts: Readonly<Record<string, () => Promise<Part>>>,
  id: string,
): () => Promise<Part> | undefined {
  return Object.hasOwn(parts, id) ? (parts[id] ?? NONE) : NONE;
}
