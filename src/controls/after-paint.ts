import { useEffect, useState } from 'preact/hooks';

/** What stands around an answer follows it after the paint: the answer doesn't wait for it. */
export function useAfterPaint<Value>(value: Value): Value {
  const [shown, show] = useState({ value });
  useEffect(() => show({ value }), [value]);
  return shown.value;
}
