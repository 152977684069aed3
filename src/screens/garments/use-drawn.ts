import { useEffect, useState } from 'preact/hooks';

/** What is drawn at once of a long list: more than is in view of a screen just opened. */
const AT_ONCE = 12;

/** How many are drawn: those in view at once, the others after they are painted, more each time. */
export function useDrawn(count: number): number {
  const [drawn, setDrawn] = useState(AT_ONCE);
  useEffect(() => {
    if (drawn < count) setDrawn(drawn + 100);
  }, [drawn, count]);
  return drawn;
}
