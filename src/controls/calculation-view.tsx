import { useMemo, useRef } from 'preact/hooks';
import { viewWords } from '#words/controls/control-words.ts';
import type { Bench } from '../calculation/bench.ts';
import {
  type Calculation,
  type Draft,
  type Field,
  isUnfinished,
  type Work,
} from '../calculation/calculation.ts';
import type { Page } from '../calculation/page.ts';
import { Actions } from './actions.tsx';
import { useAfterPaint } from './after-paint.ts';
import { AnswerWords } from './answer.tsx';
import { FieldTile } from './field-tile.tsx';
import { Pad } from './pad.tsx';
import { ChoicesOf, ChoiceTileOf, FaultsOf, later, OffersOf, TapeOfRun } from './parts.tsx';
import { steady } from './steady.tsx';
import { type Editor, useEditor } from './use-editor.ts';
import './calculation-view.css';

interface Props {
  calculation: Calculation;
  draft: Draft;
  page: Page;
  bench: Bench;
  onDraft: (draft: Draft) => void;
  /** Follows, counts, keeps, or reads a tape; with what this adds to the page. */
  onMode: (mode: string, set?: Page) => void;
  onLeave: () => void;
  /** Opens another calculation, with what it begins with. */
  onOpen: (id: string, carried?: Draft) => void;
}

const FAULT_ID = 'fault';

const AnswerParts = steady(
  later(() => import('./answer-parts.tsx').then((part) => part.AnswerParts)),
);

/** Any calculation: its answer above, its fields and the pad under the thumb. */
export function CalculationView(props: Props) {
  const { calculation, draft, page, bench } = props;
  const fields = useFields(calculation, draft);
  const work = useMemo(
    () => ({ ...calculation.work(draft, bench), page }),
    [calculation, draft, page, bench],
  );
  const around = useAfterPaint(work);
  const editor = useEditor(fields, draft, props.onDraft);
  const scroller = useRef<HTMLElement>(null);
  return (
    <div class="bench" data-hand={bench.hand}>
      <main class="reading">
        <h1>{calculation.title}</h1>
        {around.ok && around.answer.runs[0] && (
          <TapeOfRun named={around.answer.runs[0]} page={around.page} bench={bench} />
        )}
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
        <section class="scroll" ref={scroller} tabIndex={0} aria-label={viewWords.answer}>
          {/* One region for answers and faults: one that comes with its words is not read out. */}
          <div class="answer" id={FAULT_ID} aria-live="polite" aria-atomic="true">
            {work.ok ? (
              <AnswerWords answer={work.answer} bench={bench} />
            ) : (
              <FaultsOf faults={work.faults} fields={fields} bench={bench} />
            )}
          </div>
          {around.ok && <AnswerParts {...around} bench={bench} scroller={scroller} />}
        </section>
      </main>
      <Actions
        work={work}
        padOpen={editor.open}
        onPad={editor.toggle}
        counts={calculation.tally}
        field={editor.field}
        onMode={props.onMode}
        onLeave={props.onLeave}
      />
      <div class="tiles">
        {fields.map((field) => {
          const Tile = field.kind === 'choice' ? ChoiceTileOf : FieldTile;
          return (
            <Tile
              key={field.key}
              field={field}
              text={draft[field.key] ?? ''}
              bench={bench}
              current={editor.open && field.key === editor.field?.key}
              wrong={isWrong(work, field.key) ? FAULT_ID : undefined}
              odd={work.odd?.[field.key]}
              onText={editor.type}
              onPick={editor.pick}
              onNext={editor.next}
            />
          );
        })}
        {calculation.beside?.map(({ id, label, carry }) => (
          <button
            type="button"
            class="tile link"
            key={id}
            onClick={() => props.onOpen(id, carry?.(draft, bench))}
          >
            {label}
          </button>
        ))}
        <OffersOf
          work={around}
          draft={draft}
          onTake={(take) => props.onDraft({ ...draft, ...take })}
          onMode={props.onMode}
        />
      </div>
      {editor.open && editor.field && (
        <Keys field={editor.field} bench={bench} draft={draft} editor={editor} />
      )}
    </div>
  );
}

interface KeysProps {
  field: Field;
  bench: Bench;
  draft: Draft;
  editor: Editor;
}

function Keys({ field, bench, draft, editor }: KeysProps) {
  if (field.kind === 'choice') {
    return (
      <ChoicesOf
        field={field}
        chosen={draft[field.key] ?? ''}
        hand={bench.hand}
        onChoose={(value) => editor.type(field.key, value, 'all')}
        onNext={editor.next}
      />
    );
  }
  if (bench.keys === 'phone' || field.kind === 'text') return null;
  return (
    <Pad
      field={field}
      text={draft[field.key] ?? ''}
      fresh={editor.fresh}
      bench={bench}
      onText={(text, fresh) => editor.type(field.key, text, fresh)}
      onNext={editor.next}
    />
  );
}

/** The fields for a draft: the very same ones as long as they are alike. */
function useFields(calculation: Calculation, draft: Draft): readonly Field[] {
  const before = useRef<readonly Field[]>([]);
  return useMemo(() => {
    const now = calculation.fields(draft);
    if (JSON.stringify(now) !== JSON.stringify(before.current)) before.current = now;
    return before.current;
  }, [calculation, draft]);
}

function isWrong(work: Work, key: string): boolean {
  return !work.ok && work.faults.some((fault) => fault.field === key && !isUnfinished(fault));
}
