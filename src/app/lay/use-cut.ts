import { useEffect, useState } from 'preact/hooks';
import type { LaidOf } from '../../garment/record/cloth-lay.ts';
import type { CutOutlines } from './cut-outlines.ts';

const NONE: CutOutlines = new Map();

/** Outlines as they are cut; `missing`: what works them out couldn't be fetched. */
export type Cut = CutOutlines | 'awaited' | 'missing';

/** The outlines of pieces as they are cut: at once where none has one of its own, else soon. */
export function useCut(pieces: LaidOf['pieces']): Cut {
  const [cut, setCut] = useState<{ key: string; all: CutOutlines | 'missing' }>();
  const shaped = Object.entries(pieces).filter(([, { outline }]) => outline);
  const key = shaped.length > 0 ? JSON.stringify(shaped) : '';
  useEffect(() => {
    if (key === '') return undefined;
    let wanted = true;
    const have = (all: CutOutlines | 'missing') => wanted && setCut({ key, all });
    import('./cut-outlines.ts')
      .then(({ cutOutlines }) => cutOutlines({ pieces }))
      .then(have, () => have('missing'));
    return () => {
      wanted = false;
    };
  }, [key]);
  if (key === '') return NONE;
  return cut?.key === key ? cut.all : 'awaited';
}
