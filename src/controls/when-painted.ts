/** Longer than a slow phone takes to answer; where nothing is painted, as in a window that is covered, it isn't waited for. */
const LONGEST_MS = 250;

/** Does what a press brings along once the press is answered; at once where nobody can see it. */
export function whenPainted(work: () => void): void {
  let done = false;
  const once = () => {
    if (!done) work();
    done = true;
  };
  if (document.visibilityState === 'hidden') {
    once();
    return;
  }
  // A frame's callbacks run before it is painted.
  requestAnimationFrame(() => setTimeout(once));
  setTimeout(once, LONGEST_MS);
}
