import { useEffect } from 'preact/hooks';
import { madeWords } from '#words/common/made-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import { withMeasure } from '../../calculation/made.ts';
import type { PageState } from '../../calculation/page.ts';
import { typeSeparator } from '../../controls/pad-edit.ts';
import { TapeScreen } from '../../screens/tape/tape-screen.tsx';
import { TAPE_SERVICES } from './tape-services.ts';

interface Props {
  calculation: Calculation;
  state: PageState;
  bench: Bench;
  onState: (state: PageState) => void;
  onMode: (mode: string, state: PageState) => void;
}

/** Which mark's made place is asked for: `made:3`. */
const MADE = /^made:(.+)$/s;

/** A tape read for a field of a calculation, or for where a mark was really made. */
export function TapePlace({ calculation, state, bench, onState, onMode }: Props) {
  // Kept at once: a photo shared to the app later opens it anew, and this field is still to get it.
  useEffect(() => onState(state), []);
  const { draft } = state;
  const { taped, ...page } = state.page;
  const back = { draft, page };
  // As addresses called it before, where no field is called so.
  const into = taped ?? draft.into ?? '';
  const mark = MADE.exec(into)?.[1];
  const name = mark === undefined ? nameOf(calculation, draft, into) : madeWords.measured(mark);
  const mode = mark === undefined ? '' : 'follow';
  const onUse = (text: string) => onMode(mode, typedInto(calculation, back, into, text, bench));
  return (
    <TapeScreen
      bench={bench}
      field={name}
      uses={[{ name, onUse }]}
      services={TAPE_SERVICES}
      onLeave={() => onMode(mode, back)}
    />
  );
}

function nameOf(calculation: Calculation, draft: Draft, key: string): string {
  return calculation.fields(draft).find((field) => field.key === key)?.label ?? calculation.title;
}

/** With a number in a field: after the others where it holds several; or beside a mark. */
export function typedInto(
  calculation: Calculation,
  { draft, page }: PageState,
  into: string,
  text: string,
  bench: Bench,
): PageState {
  const mark = MADE.exec(into)?.[1];
  if (mark !== undefined) {
    const work = calculation.work(draft, bench);
    const runs = work.ok ? work.answer.runs : [];
    const first = runs.findIndex(({ run }) => run.marks.length > 0);
    const i = page.run === undefined ? first : Number(page.run);
    const run = runs[i]?.run;
    return { draft, page: run ? withMeasure(page, i, run, [mark, text]) : page };
  }
  const lengths = calculation.fields(draft).filter(({ kind }) => kind.startsWith('length'));
  const field = lengths.find(({ key }) => key === into) ?? lengths[0];
  if (!field) return { draft, page };
  const before = field.kind === 'lengths' ? typeSeparator(draft[field.key] ?? '') : '';
  return { draft: { ...draft, [field.key]: before + text }, page };
}
