import { Rich } from '../../../controls/rich.tsx';

/** What a key says: the step above its number, and what is below. */
export interface Said {
  above: string;
  number: string;
  below: string;
}

/** What stands on the key of a step. */
export function StepBody({ above, number, below }: Said) {
  const [, figure = number, unit = ''] = /^(.*?)\s*([a-z]*)$/i.exec(number) ?? [];
  return (
    <>
      <span class="above">{above}</span> <Fitted text={figure} unit={unit} />{' '}
      <small>
        <Rich text={below} />
      </small>
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
