/**
 * Any record as text, whatever it holds: what can't be read is still to be exported and
 * compared. What JSON has no form for is written in words, or as a list.
 */
export function recordText(record: unknown, indent?: number): string {
  const trail: unknown[] = [];
  const plain = (value: unknown): unknown => {
    if (typeof value === 'bigint' || value === undefined) return String(value);
    if (typeof value !== 'object' || value === null) return value;
    if (value instanceof Date) return String(value);
    if (trail.includes(value)) return 'the record itself';
    trail.push(value);
    const listed = value instanceof Map || value instanceof Set || ArrayBuffer.isView(value);
    const found =
      listed || Array.isArray(value)
        ? Array.from(value as Iterable<unknown>, plain)
        : Object.fromEntries(Object.entries(value).map(([key, part]) => [key, plain(part)]));
    trail.pop();
    return found;
  };
  return JSON.stringify(plain(record), null, indent);
}
