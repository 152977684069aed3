import { garmentAsideWords as words } from '#words/garment/garment-aside-words.ts';
import { garmentWords } from '#words/garment/garment-words.ts';
import type { Listed } from '../../garment/record/listed.ts';
import type { Garment } from '../../garment/record/record.ts';
import type { GarmentDeeds } from './deeds.ts';

export interface AsideProps {
  deleted: readonly Listed[];
  /** How many records can't be read, and how many of a newer version there are beside them. */
  setAside: { damaged: number; newer: number };
  /** Garments that the browser has cleared, and this page remembers. */
  cleared: readonly Garment[];
  deeds: GarmentDeeds;
}

/** What lies beside the garments: cleared and only in memory, not to be read, deleted. */
export function GarmentsAside({ deleted, setAside, cleared, deeds }: AsideProps) {
  return (
    <>
      {cleared.length > 0 && <Cleared cleared={cleared} deeds={deeds} />}
      {setAside.damaged + setAside.newer > 0 && (
        <article>
          {setAside.damaged > 0 && <p class="warning">{words.setAside(setAside.damaged)}</p>}
          {setAside.newer > 0 && <p class="warning">{words.newer(setAside.newer)}</p>}
          <button type="button" class="plain" onClick={deeds.saveSetAside}>
            {words.saveSetAside}
          </button>
        </article>
      )}
      {deleted.length > 0 && <Bin deleted={deleted} deeds={deeds} />}
    </>
  );
}

function Cleared({ cleared, deeds }: Pick<AsideProps, 'cleared' | 'deeds'>) {
  return (
    <article>
      <p class="warning" role="alert">
        {words.cleared(cleared.map(({ name }) => name).join(', '))}
      </p>
      <div class="keys">
        <button type="button" class="plain main" onClick={deeds.saveCleared}>
          {words.saveCleared}
        </button>
        <button type="button" class="plain" onClick={deeds.putBackCleared}>
          {words.putBackCleared}
        </button>
      </div>
    </article>
  );
}

function Bin({ deleted, deeds }: Pick<AsideProps, 'deleted' | 'deeds'>) {
  return (
    <article>
      <h2>{words.away}</h2>
      <ul>
        {deleted.map((garment) => (
          <li key={garment.id}>
            <span>{garment.name}</span>
            <button type="button" class="plain" onClick={() => deeds.bringBack(garment)}>
              {garmentWords.bringBack}
            </button>
          </li>
        ))}
      </ul>
    </article>
  );
}
