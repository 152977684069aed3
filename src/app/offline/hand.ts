let held = 0;

/**
 * Keeps this page from being loaded anew unasked, as long as something that only the page holds is
 * in the maker's hand: a photo that is open. Until the returned function is called.
 */
export function holdPage(): () => void {
  held += 1;
  let isHeld = true;
  return () => {
    if (isHeld) held -= 1;
    isHeld = false;
  };
}

export function isPageHeld(): boolean {
  return held > 0;
}
