import { useState } from 'preact/hooks';
import { garmentSheetWords as words } from '#words/garment/garment-sheet-words.ts';
import type { PaperServices } from '../../../controls/paper-services.ts';
import type { SheetJob } from '../../../drawing/sheet-job.ts';
import { sheetText } from './sheet-as-text.ts';

interface Props {
  job: SheetJob;
  services: PaperServices;
}

/** The sheet as text: to read here, to save, and to share. */
export function SheetText({ job, services }: Props) {
  const [failed, setFailed] = useState(false);
  const [open, setOpen] = useState(false);
  const hand = (way: 'save' | 'share') => {
    setFailed(false);
    const file = new Blob([sheetText(job)], { type: 'text/plain' });
    services[way]?.(`${job.title}.txt`, file).catch(() => setFailed(true));
  };
  return (
    <>
      <button type="button" aria-expanded={open} onClick={() => setOpen((was) => !was)}>
        {words.readText}
      </button>
      {open && <pre>{sheetText(job)}</pre>}
      {failed && (
        <p class="warning" role="alert">
          {words.textFailed}
        </p>
      )}
      <button type="button" onClick={() => hand('save')}>
        {words.asText}
      </button>
      {services.share && (
        <button type="button" onClick={() => hand('share')}>
          {words.shareText}
        </button>
      )}
    </>
  );
}
