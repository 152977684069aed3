import { useState } from 'preact/hooks';
import { findWords, PASSED_OVER } from '#words/calculations/find-words.ts';
import { found, type Sought } from '../calculation/find.ts';
import { adopt } from './adopt.ts';
import css from './find-among.css?inline';

adopt(css);

/** What may be chosen: in a group of its kind. */
export interface Choosable extends Sought {
  id: string;
  group: string;
}

interface Props {
  all: readonly Choosable[];
  /** What the list is called. */
  list: string;
  onChoose: (id: string, name: string) => void;
}

/** What may be chosen, by group, or what fits what is looked for. The field is under the thumb until it is pressed. */
export function FindAmong({ all, list, onChoose }: Props) {
  const [sought, setSought] = useState('');
  const [searching, setSearching] = useState(false);
  const fitting = found(sought, all, PASSED_OVER);
  const none = fitting.length === 0;
  const shown = none ? all : fitting;
  const groups = [...new Set(shown.map(({ group }) => group))];
  const choose = ({ id, name }: Choosable) => (
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
      <nav aria-label={list}>
        <p role="status">{none && findWords.none(sought.trim())}</p>
        {sought.trim() !== '' && !none
          ? shown.map(choose)
          : groups.map((group) => (
              <section key={group} aria-label={group}>
                <h2>{group}</h2>
                {shown.filter((it) => it.group === group).map(choose)}
              </section>
            ))}
      </nav>
    </search>
  );
}
