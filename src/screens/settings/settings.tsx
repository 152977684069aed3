import type { ComponentProps } from 'preact';
import { settingsWords } from '#words/phone/settings-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { adopt } from '../../controls/adopt.ts';
import { Rich } from '../../controls/rich.tsx';
import { Licences } from './licences.tsx';
import { News } from './news.tsx';
import css from './settings.css?inline';

adopt(css);

interface Props {
  bench: Bench;
  choices: { readonly [Key in keyof Bench]: readonly Bench[Key][] };
  onBench: (bench: Bench) => void;
  /** Why it could not be kept. */
  said: string | undefined;
  onLeave: () => void;
  loadLicences: ComponentProps<typeof Licences>['load'];
}

const ORDER: readonly (keyof Bench)[] = [
  'unit',
  'metric',
  'inch',
  'hand',
  'theme',
  'voice',
  'decimalMark',
  'keys',
];

/** How this bench is set up. */
export function Settings({ bench, choices, onBench, said, onLeave, loadLicences }: Props) {
  return (
    <div class="settings" data-hand={bench.hand}>
      <main>
        <h1>{settingsWords.title}</h1>
        <p>{settingsWords.about}</p>
        {said !== undefined && (
          <p role="status">
            <b>{said}</b>
          </p>
        )}
        <form onSubmit={(event) => event.preventDefault()}>
          {ORDER.map((key) => (
            <fieldset key={key}>
              <legend>{settingsWords.names[key]}</legend>
              {choices[key].map((value) => (
                <label key={value}>
                  <input
                    type="radio"
                    name={key}
                    value={value}
                    checked={bench[key] === value}
                    onChange={() => onBench({ ...bench, [key]: value })}
                  />
                  <span>
                    <Rich text={settingsWords.values[key][value] ?? value} />
                  </span>
                </label>
              ))}
            </fieldset>
          ))}
        </form>
        <News />
        <Licences load={loadLicences} />
      </main>
      <nav class="actions" aria-label={settingsWords.title}>
        <button type="button" onClick={onLeave}>
          {settingsWords.leave}
        </button>
      </nav>
    </div>
  );
}
