import { useState } from 'preact/hooks';
import { calculationNames, PASSED_OVER } from '#words/calculation-names.ts';
import { findWords } from '#words/find-words.ts';
import { found } from '../calculation/find.ts';
import { adopt } from './adopt.ts';
import css from './find-list.css?inline';

adopt(css);

interface Props {
  /** Whether it is among those that may be chosen here. */
  offers?: (id: string) => boolean;
  onChoose: (id: string, name: string) => void;
}

interface Entry {
  id: string;
  name: string;
  also: string;
  stage: string;
}

const ALL: readonly Entry[] = Object.values(calculationNames).flatMap(({ stage, of }) =>
  Object.entries(of).map(([id, it]) => ({ id, stage, ...it })),
);

/** Calculations by stage, or those that fit what is looked for. The field is under the thumb until it is pressed. */
export function FindList({ offers, onChoose }: Props) {
  const [sought, setSought] = useState('');
  const [searching, setSearching] = useState(false);
  const all = offers ? ALL.filter(({ id }) => offers(id)) : ALL;
  const fitting = found(sought, all, PASSED_OVER);
  const none = fitting.length === 0;
  const shown = none ? all : fitting;
  const stages = [...new Set(shown.map(({ stage }) => stage))];
  const choose = ({ id, name }: Entry) => (
    <button type="button" key={id} onClick={() => onChoose(id, name)}>
      {name}
    </button>
  );
  return (
    <search class="find" data-searching={searching}>
      <label>
        {findWords.search}
        <input
          type="search"
          value={sought}
          autoComplete="off"
          onFocus={() => setSearching(true)}
          onInput={(event) => setSought(event.currentTarget.value)}
        />
      </label>
      <nav aria-label={findWords.list}>
        <p role="status">{none && findWords.none(sought.trim())}</p>
        {sought.trim() !== '' && !none
          ? shown.map(choose)
          : stages.map((stage) => (
              <section key={stage} aria-label={stage}>
                <h2>{stage}</h2>
                {shown.filter((it) => it.stage === stage).map(choose)}
              </section>
            ))}
      </nav>
    </search>
  );
}
