import { Rich } from '../../../controls/rich.tsx';

/** What a key says: the step above its number, and what is below. */
export interface Said {
  above: string;
  /** What the work is called in that; what was kept by an earlier build doesn't say it. */
  work?: string;
  number: string;
  below: string;
}

/** What stands on the key of a step. */
export function StepBody({ above, work = '', number, below }: Said) {
  const [, figure = number, unit = ''] = /^(.*?)\s*([a-z]*)$/i.exec(number) ?? [];
  return (
    <>
      <span class="above">
        <Above text={above} work={work} />
      </span>{' '}
      <Fitted text={figure} unit={unit} />{' '}
      <small>
        <Rich text={below} />
      </small>
    </>
  );
}

/** A name of more letters than this is two lines at most. */
const LONG_NAME = 40;

/** The step in words, in which a long name gives way before what is done, and from where. */
function Above({ text, work }: { text: string; work: string }) {
  // With the colon or comma after it, which would begin a line of its own.
  const end = text.indexOf(' ', work.length);
  if (work.length <= LONG_NAME || !text.startsWith(work) || end < 0) return <>{text}</>;
  return (
    <>
      <span class="long-name">{text.slice(0, end)}</span>
      {text.slice(end)}
    </>
  );
}

/** A number as large as its width allows: the style sheet divides the room by its letters. */
function Fitted({ text, unit }: { text: string; unit: string }) {
  const letters = text.replace(/\d+\/\d+/, '12').length + unit.length / 2;
  return (
    <span class="number" style={{ '--letters': letters }}>
      <b>
        <Rich text={text} />
      </b>{' '}
      {unit}
    </span>
  );
}
