import { useState } from 'preact/hooks';
import { licenceWords as words } from '#words/phone/licence-words.ts';
import { useLoaded } from '../../controls/use-loaded.ts';

/** A part of the app that others wrote. */
export interface Part {
  name: string;
  version: string;
  licence: string;
  /** Empty where it came without one. */
  text: string;
}

interface Props {
  /** The same function each time. */
  load: () => Promise<readonly Part[]>;
}

/** What others wrote of the app, with their licences; fetched when asked for. */
export function Licences({ load }: Props) {
  const [open, setOpen] = useState(false);
  return (
    <section class="licences">
      <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
        {words.title}
      </button>
      {open && <List load={load} />}
    </section>
  );
}

function List({ load }: Props) {
  const loaded = useLoaded(load);
  if (loaded.state === 'loading') return <p role="status">{words.fetching}</p>;
  if (loaded.state === 'missing') {
    return (
      <p role="alert">
        {words.missing}{' '}
        <button type="button" onClick={loaded.again}>
          {words.again}
        </button>
      </p>
    );
  }
  return (
    <>
      <p>{words.about}</p>
      {loaded.value.map(({ name, version, licence, text }) => (
        <details key={name}>
          <summary>{words.part(name, version, licence)}</summary>
          <pre>{text || words.noText(licence)}</pre>
        </details>
      ))}
    </>
  );
}
