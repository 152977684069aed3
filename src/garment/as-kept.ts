import type { Draft } from '../calculation/calculation.ts';

/** A draft as it is once it is kept: what is measured now is what it was opened with. */
export function asKept(draft: Draft): Draft {
  const measured = Object.entries(draft).flatMap(([key, text]) =>
    /^made(-\d+)?$/.test(key) ? [[key.replace('made', 'was'), text]] : [],
  );
  return { ...draft, ...Object.fromEntries(measured) };
}
