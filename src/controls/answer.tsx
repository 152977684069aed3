import type { RefObject } from 'preact';

import { shownText } from '../lengths/show-length.ts';
import type { Bench } from './bench.ts';
import type { Answer, Line } from './calculation.ts';
import { FigureOf, ListOfMarks } from './parts.tsx';
import { Rich } from './rich.tsx';
import { steady } from './steady.tsx';
import './answer.css';

interface Props {
  answer: Answer;
  bench: Bench;
}

/** The answer in words: the number, what to do with it, what to mind. */
export const AnswerWords = steady(function Words({ answer, bench }: Props) {
  return (
    <>
      <p class="number">
        <Headline {...answer.headline} bench={bench} />
      </p>
      <p>
        <Rich text={answer.sentence} />
      </p>
      {answer.warnings.map((warning) => (
        <p class="warning" key={warning}>
          <Rich text={warning} />
        </p>
      ))}
    </>
  );
});

/** What can be read after the answer: every mark, drawings, further lines, how it was got. */
export const AnswerParts = steady(function Parts(
  props: Props & { scroller: RefObject<HTMLElement | null> },
) {
  const { answer, bench, scroller } = props;
  return (
    <>
      {answer.runs
        .filter(({ run }) => run.marks.length > 1)
        .map(({ name, run }) => (
          <ListOfMarks key={name} run={run} bench={bench} scroller={scroller} />
        ))}
      {answer.figures?.map((drawn) => (
        <FigureOf key={drawn.name} {...drawn} />
      ))}
      <Lines lines={answer.lines} />
      {answer.cautions.map((caution) => (
        <p class="warning caution" key={caution}>
          {caution}
        </p>
      ))}
      {answer.workings.map((working) => (
        <p class="how" key={working.formula}>
          <Rich text={working.formula} /> <cite>{working.source}</cite>
        </p>
      ))}
    </>
  );
});

function Headline({ before, number, after, bench }: Answer['headline'] & { bench: Bench }) {
  const text = typeof number === 'string' ? number : shownText(number, bench.decimalMark);
  const [, figure, unit] = /^(.*?)\s*([a-z]*)$/i.exec(text) ?? ['', text, ''];
  return (
    <>
      {before && <span>{before} </span>}
      <strong>
        <Rich text={figure ?? text} />
      </strong>{' '}
      <span>
        {unit} {after}
      </span>
    </>
  );
}

function Lines({ lines }: { lines: readonly Line[] }) {
  if (lines.length === 0) return null;
  return (
    <dl class="lines">
      {lines.map((line) => (
        <div key={line.label}>
          <dt>{line.label}</dt>
          <dd>
            <Rich text={line.value} />
          </dd>
        </div>
      ))}
    </dl>
  );
}
