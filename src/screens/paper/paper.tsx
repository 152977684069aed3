import { useMemo } from 'preact/hooks';
import { paperWords as words } from '#words/paper/paper-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer } from '../../calculation/calculation.ts';
import type { Page } from '../../calculation/page.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { MakePdf } from '../../controls/make-pdf.tsx';
import { Choice } from '../../controls/paper-choice.tsx';
import type { PaperServices } from '../../controls/paper-services.ts';
import type { PaperOutcome, PaperProblem, PaperWords } from '../../drawing/paper-job.ts';
import { lettersLacking } from '../../drawing/paper-letters.ts';
import { pagesOf } from '../../drawing/paper-pages.ts';
import { mm } from '../../lengths/length.ts';
import {
  chosenPart,
  MARGINS,
  PAPER_KEYS,
  partsOf,
  readMargin,
  sizeOf,
  typedMargin,
} from './choices.ts';
import { Svgs } from './svgs.tsx';

interface Props {
  title: string;
  /** What the pages are called as long as nothing else is typed. */
  name: string;
  answer: Answer | undefined;
  bench: Bench;
  page: Page;
  services: PaperServices;
  onPage: (page: Page) => void;
  onLeave: () => void;
}

/** An answer's marks and drawings as a PDF at true size, and as SVG. */
export function Paper(props: Props) {
  const { title, answer, bench, page, services, onPage, onLeave } = props;
  const parts = useMemo(() => partsOf(answer), [answer]);
  const part = chosenPart(parts, page);
  const size = sizeOf(page, bench);
  const margin = typedMargin(page);
  const name = page[PAPER_KEYS.name] ?? props.name;
  const laid = useMemo((): PaperOutcome | string => {
    const read = readMargin(margin);
    if (typeof read === 'string') return read;
    const job = { strips: [], drawings: [], ...part, title: name };
    return pagesOf(job, { size, margin: read }, pageWords(bench));
  }, [name, part, size, margin, bench]);
  const set = (key: keyof typeof PAPER_KEYS, value: string) =>
    onPage({ ...page, [PAPER_KEYS[key]]: value });
  return (
    <div class="paper" data-hand={bench.hand}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0}>
        <h1>{words.of(title)}</h1>
        <p role="status">{said(laid, name, props)}</p>
      </main>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <section class="choose" tabIndex={0} aria-label={words.title}>
        {parts.length > 1 && (
          <Choice
            legend={words.what}
            name="what"
            options={Object.fromEntries(parts.map(({ value, label }) => [value, label]))}
            chosen={part?.value ?? ''}
            onChoose={(value) => set('what', value)}
          />
        )}
        <Text label={words.name} value={name} onText={(value) => set('name', value)} />
        <Choice
          legend={words.size}
          name="paper"
          options={words.sizes}
          chosen={size}
          onChoose={(value) => set('size', value)}
        />
        <Choice
          legend={words.margin}
          name="margin"
          options={MARGINS}
          chosen={margin}
          onChoose={(value) => set('margin', value)}
        />
        <Text label={words.otherMargin} value={margin} onText={(value) => set('margin', value)} />
        <Svgs parts={parts.filter(({ value }) => value !== '')} save={services.save} />
      </section>
      {typeof laid !== 'string' && laid.ok && (
        <div class="make">
          <MakePdf title={name} pages={laid.pages} services={services} />
        </div>
      )}
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={onLeave}>
          {words.leave}
        </button>
      </nav>
    </div>
  );
}

/** What stands on the pages, with lengths as this bench shows them. */
function pageWords(bench: Bench): PaperWords {
  const show = (length: number) => exactly(mm(length), bench);
  return {
    ...words,
    bandOf: ({ name, datum, length }, from, to) =>
      words.bandOf(name, show(from), show(to), show(length), datum),
    partOf: (across, down) =>
      words.partOf(show(across.from), show(across.to), show(down.from), show(down.to)),
  };
}

interface TextProps {
  label: string;
  value: string;
  onText: (value: string) => void;
}

function Text({ label, value, onText }: TextProps) {
  return (
    <label>
      <span>{label}</span>
      <input
        type="text"
        value={value}
        maxLength={60}
        onInput={(event) => onText(event.currentTarget.value)}
      />
    </label>
  );
}

/** How many pages there are, or why there are none. */
function said(laid: PaperOutcome | string, name: string, props: Props): string {
  if (typeof laid === 'string') return laid;
  if (!laid.ok) return why(laid.problem, props);
  const lacking = lettersLacking(name);
  return [
    `${words.pages(laid.pages.length)}. ${words.actual}`,
    ...(lacking === '' ? [] : [words.lacking(lacking)]),
  ].join(' ');
}

function why(problem: PaperProblem, { answer, bench }: Props): string {
  const show = (length: number) => exactly(mm(length), bench);
  switch (problem.kind) {
    case 'nothing':
      return answer ? words.noMarks : words.nothing;
    case 'too-long':
      return words.tooLong(show(problem.most));
    case 'too-many':
      return words.tooMany(problem.pages, problem.most);
    case 'too-wide':
      return words.tooWide(show(problem.most));
    case 'no-room':
      return words.noRoom(problem.most);
  }
}
