import type { Bench } from '../calculation/bench.ts';
import type { Answer } from '../calculation/calculation.ts';
import { shownText } from '../lengths/show-length.ts';
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
