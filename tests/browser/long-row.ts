import { withKeys } from '../../src/garment/actions/with-keys.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { garmentOf, typed } from '../garment/trial/garments.ts';
import { KNOWN } from '../garment/trial/known.ts';

/** The step it is left at, as it is kept beside it. */
export const IN_HAND = { row: 'strip||holes' };

/**
 * Invented: a long strip to be punched, with holes for hundreds of presses and no two at one place,
 * and two hems whose fields change nothing of it.
 */
export function longRow(): Garment {
  const hem = (rank: number, depth: string) => ({
    name: `Hem ${rank}`,
    calculation: 'hem',
    older: 2,
    rank,
    fields: { depth: typed(depth), turn: typed('0.7') },
  });
  const strip = {
    name: 'Strip',
    calculation: 'edging',
    older: 2,
    rank: 1,
    // What is left of the fields is as the calculation begins.
    fields: {
      length: typed('400'),
      pitch: typed('8', 'mm'),
      end: typed('0.4'),
      fit: typed('fill'),
      rows: typed('one'),
    },
  };
  const works = { strip, front: hem(2, '2'), back: hem(3, '3') };
  const record = { ...garmentOf({ works }), id: 'row', name: 'Long row (invented)' };
  return withKeys(record, KNOWN);
}
