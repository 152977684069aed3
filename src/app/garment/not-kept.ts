import { useEffect, useState } from 'preact/hooks';
import { notKept } from './deeds.ts';

/** Why something is not kept yet, in words; they are fetched, so empty for a moment. */
export function useNotKept(trouble: unknown): string {
  const [why, setWhy] = useState('');
  useEffect(() => {
    if (trouble) void notKept(trouble).then(setWhy);
  }, [trouble]);
  return why;
}
