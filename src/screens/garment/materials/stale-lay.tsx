import { layStaleWords as words } from '#words/garment/garment-lay-stale-words.ts';
import { Rich } from '../../../controls/rich.tsx';
import { materialsOf } from '../../../garment/materials/materials.ts';
import type { SaysStale } from '../works/says-stale.ts';
import { laySaid } from './lay-stale.ts';

/** That the lay whose length a field takes doesn't hold any more. */
export const StaleLay: SaysStale = ({ state: { record, answer }, bench, lay: id, field }) => {
  const lay = materialsOf(record, answer).all.find((one) => one.id === id)?.lay;
  if (lay?.found && !lay.stale) return null;
  const said = lay?.found ? laySaid({ answer, bench }, lay) : words.goneFrom;
  if (field === undefined)
    return (
      <small>
        <Rich text={said} />
      </small>
    );
  return (
    <p class="warning">
      <Rich text={words.atField(field, said)} />
    </p>
  );
};
