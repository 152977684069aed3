import { useRef } from 'preact/hooks';

/** The very same object as long as each thing in it is the same: for parts drawn anew only when they change. */
export function useAlike<Of extends object>(now: Of): Of {
  const before = useRef(now);
  const keys = Object.keys(now) as (keyof Of)[];
  if (keys.some((key) => now[key] !== before.current[key])) before.current = now;
  return before.current;
}
