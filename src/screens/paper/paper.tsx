import { useMemo } from 'preact/hooks';

import { adopt } from '../../controls/adopt.ts';
import type { Bench } from '../../controls/bench.ts';
import type { Answer, Draft } from '../../controls/calculation.ts';
import { exactly } from '../../controls/tape-text.ts';
import type { Figure } from '../../drawing/figure.ts';
import type { PaperProblem, PaperSize } from '../../drawing/paper-job.ts';
import { pagesOf } from '../../drawing/paper-pages.ts';
import { svgOf } from '../../drawing/svg.ts';
import { templateFigure } from '../../drawing/template-figure.ts';
import { mm } from '../../lengths/length.ts';
import { paperWords as words } from '../../words/paper-words.ts';
import { MakePdf } from './make-pdf.tsx';
import css from './paper.css?inline';
import type { PaperServices } from './services.ts';
import { stripsOf } from './strips.ts';

adopt(css);

interface Props {
  title: string;
  /** What the pages are called as long as nothing else is typed. */
  name: string;
  answer: Answer | undefined;
  bench: Bench;
  draft: Draft;
  services: PaperServices;
  onDraft: (draft: Draft) => void;
  onLeave: () => void;
}

/** An answer's marks as a PDF at true size, and its drawings as SVG. */
export function Paper(props: Props) {
  const { title, answer, bench, draft, services, onDraft, onLeave } = props;
  const strips = useMemo(() => (answer ? stripsOf(answer.runs) : []), [answer]);
  const size: PaperSize = draft.paper === 'letter' ? 'letter' : 'a4';
  const margin = Object.hasOwn(words.margins, draft.margin ?? '') ? (draft.margin ?? '') : '10';
  const name = draft.page ?? props.name;
  const laid = useMemo(
    () => pagesOf({ title: name, strips }, { size, margin: Number(margin) }, words),
    [name, strips, size, margin],
  );
  const set = (change: Draft) => onDraft({ ...draft, ...change });
  const drawings = [
    ...strips.map((strip) => ({ name: strip.name, figure: templateFigure(strip) })),
    ...(answer?.figures ?? []),
  ];
  return (
    <div class="paper" data-hand={bench.hand}>
      <main>
        <h1>{words.of(title)}</h1>
        <p role="status">
          {laid.ok
            ? `${words.pages(laid.pages.length)}. ${words.actual}`
            : why(laid.problem, bench)}
        </p>
      </main>
      <section class="choose" aria-label={words.title}>
        <label>
          <span>{words.name}</span>
          <input
            type="text"
            value={name}
            maxLength={60}
            onInput={(event) => set({ page: event.currentTarget.value })}
          />
        </label>
        <Choice
          legend={words.size}
          name="paper"
          options={words.sizes}
          chosen={size}
          onChoose={(paper) => set({ paper })}
        />
        <Choice
          legend={words.margin}
          name="margin"
          options={words.margins}
          chosen={margin}
          onChoose={(next) => set({ margin: next })}
        />
        {laid.ok && (
          <MakePdf
            key={`${name} ${size} ${margin}`}
            title={name}
            pages={laid.pages}
            services={services}
          />
        )}
        <p>{words.svgs}</p>
        {drawings.map((one) => (
          <button
            type="button"
            key={one.name}
            onClick={() => services.save(`${one.name}.svg`, svgFile(one.name, one.figure))}
          >
            {words.svg(one.name)}
          </button>
        ))}
      </section>
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={onLeave}>
          {words.leave}
        </button>
      </nav>
    </div>
  );
}

function svgFile(name: string, figure: Figure): Blob {
  return new Blob([svgOf(name, figure)], { type: 'image/svg+xml' });
}

interface ChoiceProps {
  legend: string;
  name: string;
  options: Readonly<Record<string, string>>;
  chosen: string;
  onChoose: (value: string) => void;
}

function Choice({ legend, name, options, chosen, onChoose }: ChoiceProps) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      {Object.entries(options).map(([value, label]) => (
        <label key={value}>
          <input
            type="radio"
            name={name}
            value={value}
            checked={value === chosen}
            onChange={() => onChoose(value)}
          />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
}

function why(problem: PaperProblem, bench: Bench): string {
  const show = (length: number) => exactly(mm(length), bench);
  switch (problem.kind) {
    case 'nothing':
      return words.nothing;
    case 'too-long':
      return words.tooLong(show(problem.most));
    case 'too-wide':
      return words.tooWide(show(problem.most));
    case 'no-room':
      return words.noRoom(show(problem.most));
  }
}
