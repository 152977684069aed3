/** What was measured of marks made, as typed: by mark label. */
export type Made = ReadonlyMap<string, string>;

/** Where a draft holds what was measured of a run: each run of a calculation has its own. */
export function madeKey(run: number): string {
  return run === 0 ? 'made' : `made-${run + 1}`;
}

/** Reads `3=15.6; 5=30 1/8 in`. What is not such a pair is passed over. */
export function readMade(text: string): Made {
  const made = new Map<string, string>();
  for (const item of text.split(';')) {
    const cut = item.indexOf('=');
    const label = item.slice(0, cut).trim();
    const typed = item.slice(cut + 1).trim();
    if (cut > 0 && label !== '' && typed !== '') made.set(label, typed);
  }
  return made;
}

/** The same with one mark measured anew; an empty measure takes it out. */
export function writeMade(made: Made, label: string, typed: string): string {
  const next = new Map(made).set(label, typed.trim());
  return [...next]
    .filter(([, measure]) => measure !== '')
    .map((pair) => pair.join('='))
    .join('; ');
}
