import { Fragment, type RefObject } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import { drawnAnswer } from '../calculation/as-made.ts';
import type { Bench } from '../calculation/bench.ts';
import type { Answer, Line } from '../calculation/calculation.ts';
import type { Page } from '../calculation/page.ts';
import { adopt } from './adopt.ts';
import css from './answer-parts.css?inline';
import { FigureView } from './figure-view.tsx';
import { MarkList } from './mark-list.tsx';
import { Rich } from './rich.tsx';
import { useWhenSeen } from './use-when-seen.ts';

adopt(css);

interface Props {
  answer: Answer;
  /** With what was measured of its marks. */
  page: Page;
  bench: Bench;
  scroller: RefObject<HTMLElement | null>;
}

/**
 * What can be read after the answer: every mark, drawings, further lines, how it was got.
 * All of it comes at once: what stands below would move if one part came after another.
 */
export function AnswerParts(props: Props) {
  const { scroller } = props;
  const top = useRef<HTMLParagraphElement>(null);
  const { answer: planned, page, bench } = useWhenSeen(props, top, scroller);
  const answer = useMemo(() => drawnAnswer(planned, page, bench), [planned, page, bench]);
  const lists = <Lists runs={answer.runs} bench={bench} scroller={scroller} />;
  return (
    <>
      {/* Always there, so that what comes into it is read out. */}
      <p class="asked" role="status" ref={top}>
        {answer.asked && `? ${answer.asked}`}
      </p>
      {!answer.listsLast && lists}
      {answer.figures?.map(({ name, draw }) => (
        <FigureView key={name} name={name} figure={draw()} />
      ))}
      <Lines lines={answer.lines} />
      {answer.cautions.map((caution) => (
        <p class="warning caution" key={caution}>
          {caution}
        </p>
      ))}
      {answer.listsLast && lists}
      {answer.workings.map((working) => (
        <p class="how" key={working.formula}>
          <Rich text={working.formula} /> <cite>{working.source}</cite>
        </p>
      ))}
    </>
  );
}

function Lists({ runs, bench, scroller }: Omit<Props, 'answer' | 'page'> & Pick<Answer, 'runs'>) {
  return runs
    .filter(({ run }) => run.marks.length > 1)
    .map(({ name, run }) => (
      <Fragment key={name}>
        {runs.length > 1 && <h2 class="run">{name}</h2>}
        <MarkList run={run} bench={bench} scroller={scroller} />
      </Fragment>
    ));
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
