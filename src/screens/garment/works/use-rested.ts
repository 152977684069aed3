import { useEffect, useState } from 'preact/hooks';

/** How long a hand rests before what it typed is looked at further, in ms. */
const REST = 300;

/** Whether a value hasn't changed for a moment; of nothing at once. */
export function useRested(value: unknown): boolean {
  const [rested, rest] = useState<{ value: unknown }>({ value: undefined });
  useEffect(() => {
    const timer = setTimeout(() => rest({ value }), value === undefined ? 0 : REST);
    return () => clearTimeout(timer);
  }, [value]);
  return value === rested.value;
}
