import { useState } from 'preact/hooks';
import { askWords as words } from '#words/tape/tape-question-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { answerTo, printable, type Question, type Reading } from '../../camera/tape-eye.ts';
import { FieldTile } from '../../controls/field-tile.tsx';
import { Pad } from '../../controls/pad.tsx';
import type { Fresh } from '../../controls/pad-keys.ts';

interface Props {
  reading: Reading;
  question: Question;
  bench: Bench;
  onAnswered: (reading: Reading) => void;
}

/** The question that must be answered before a number counts as read. */
export function Ask({ reading, question, bench, onAnswered }: Props) {
  const [correcting, setCorrecting] = useState(false);
  if (question.kind === 'unit') {
    return (
      <div class="asking">
        <p role="status">{words.unit(String(question.value))}</p>
        <div class="ways">
          {question.choices.map((unit) => (
            <button
              type="button"
              key={unit}
              onClick={() => onAnswered(answerTo(reading, question, { kind: 'unit', unit }))}
            >
              {words.units[unit]}
            </button>
          ))}
        </div>
      </div>
    );
  }
  const answer = (value: number) =>
    onAnswered(answerTo(reading, question, { kind: 'line', value }));
  if (correcting) {
    return <Correct {...printable(reading, question)} bench={bench} onValue={answer} />;
  }
  return (
    <div class="asking">
      <p role="status">{words.line(String(question.value), words.short[question.unit])}</p>
      <div class="ways">
        <button type="button" class="main" onClick={() => answer(question.value)}>
          {words.yes}
        </button>
        <button type="button" onClick={() => setCorrecting(true)}>
          {words.no}
        </button>
      </div>
    </div>
  );
}

const FIELD = { key: 'printed', kind: 'number', label: words.right } as const;
const WRONG = 'printed-wrong';

interface CorrectProps {
  /** What can be printed there, both included. */
  least: number;
  most: number;
  bench: Bench;
  onValue: (value: number) => void;
}

/** What is really printed at the line asked about. */
function Correct({ least, most, bench, onValue }: CorrectProps) {
  const [{ text, fresh }, type] = useState<{ text: string; fresh: Fresh }>({
    text: '',
    fresh: 'all',
  });
  const [refused, setRefused] = useState<string>();
  const done = () => {
    const value = Number(text);
    const good = /^\s*\d+\s*$/.test(text) && value >= least && value <= most;
    if (good) onValue(value);
    else setRefused(text);
  };
  // What was typed stays; the sentence goes once it is typed on.
  const wrong = refused === text;
  return (
    <div class="asking">
      {wrong && (
        <p id={WRONG} role="alert" class="warning">
          {words.printed(text.trim(), least, most)}
        </p>
      )}
      <div class="tiles one">
        <FieldTile
          field={FIELD}
          text={text}
          bench={bench}
          current
          wrong={wrong ? WRONG : undefined}
          onText={(_, typed) => type({ text: typed, fresh: 'no' })}
          onPick={() => undefined}
          onNext={done}
        />
      </div>
      {bench.keys === 'pad' && (
        <Pad
          field={FIELD}
          text={text}
          fresh={fresh}
          bench={bench}
          onText={(typed, then) => type({ text: typed, fresh: then })}
          onNext={done}
        />
      )}
    </div>
  );
}
