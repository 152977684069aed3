import { useEffect, useState } from 'preact/hooks';
import { notKept } from './deeds.ts';

/**
 * Why something is not kept yet, in words; they are fetched, so empty for a moment. What has
 * come onto the disk after all is not said to be missing any more.
 */
export function useNotKept(trouble: unknown): string {
  const [said, setSaid] = useState<{ trouble: unknown; why: string }>();
  useEffect(() => {
    if (trouble) void notKept(trouble).then((why) => setSaid({ trouble, why }));
  }, [trouble]);
  return trouble && said?.trouble === trouble ? said.why : '';
}
