import { useEffect, useState } from 'preact/hooks';

/** What is drawn at once of a long list: more than is in view of a screen just opened. */
const AT_ONCE = 12;
/** What is drawn at a time after that: hundreds come in a few frames, and a press waits for none for long. */
const AT_A_TIME = 250;

/** How many are drawn: those in view at once, the others after they are painted. */
export function useDrawn(count: number): number {
  const [drawn, setDrawn] = useState(AT_ONCE);
  useEffect(() => {
    if (drawn < count) setDrawn(drawn + AT_A_TIME);
  }, [drawn, count]);
  return drawn;
}
