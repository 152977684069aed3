import { useEffect, useRef, useState } from 'preact/hooks';
import { paperWords as words } from '#words/paper/paper-words.ts';
import type { PaperPage } from '../drawing/paper-job.ts';
import type { PaperServices } from './paper-services.ts';

interface Props {
  title: string;
  pages: readonly PaperPage[];
  services: PaperServices;
}

type Made =
  | { state: 'not-yet' | 'failed' }
  | { state: 'making'; done: number; stop: () => void }
  | { state: 'made'; file: Blob };

const NOT_YET: Made = { state: 'not-yet' };

/** The key that writes the PDF, how far it is, and the file once it is there. */
export function MakePdf({ title, pages, services }: Props) {
  const [last, setMade] = useState<Made & { of?: readonly PaperPage[] }>(NOT_YET);
  // What was made of other pages is of no use any more, and what is being made is called off.
  const made = last.of === pages ? last : NOT_YET;
  const running = useRef<AbortController>(undefined);
  useEffect(() => () => running.current?.abort(), [pages]);
  const fail = () => setMade({ state: 'failed', of: pages });
  const start = () => {
    const control = new AbortController();
    running.current = control;
    const stop = () => control.abort();
    const show = (next: Made) => {
      if (!control.signal.aborted) setMade({ ...next, of: pages });
    };
    show({ state: 'making', done: 0, stop });
    services
      .makePdf(title, pages, {
        signal: control.signal,
        onProgress: (done) => show({ state: 'making', done, stop }),
      })
      .then(
        (file) => show({ state: 'made', file }),
        () => show({ state: 'failed' }),
      );
  };
  if (made.state === 'making') {
    return (
      <>
        <p role="status">{words.making(Math.round(made.done * 100))}</p>
        <button
          type="button"
          onClick={() => {
            made.stop();
            setMade(NOT_YET);
          }}
        >
          {words.cancel}
        </button>
      </>
    );
  }
  if (made.state === 'made') {
    const { save, share } = services;
    const name = `${title}.pdf`;
    return (
      <>
        <button type="button" class="main" onClick={() => save(name, made.file).catch(fail)}>
          {words.save}
        </button>
        {share && (
          // Called off by the maker, or refused by the phone: the file can still be saved.
          <button type="button" onClick={() => void share(name, made.file).catch(() => undefined)}>
            {words.share}
          </button>
        )}
      </>
    );
  }
  return (
    <>
      {made.state === 'failed' && (
        <p class="warning" role="alert">
          {words.failed}
        </p>
      )}
      <button type="button" class="main" onClick={start}>
        {words.make}
      </button>
    </>
  );
}
