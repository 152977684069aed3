import { useMemo, useRef } from 'preact/hooks';

/** A function that stays the same and always does what the one of now does: for parts drawn anew only when they change. */
export function useSame<Given extends unknown[]>(
  deed: (...given: Given) => void,
): (...given: Given) => void {
  const now = useRef(deed);
  now.current = deed;
  return useMemo(
    () =>
      (...given) =>
        now.current(...given),
    [],
  );
}
