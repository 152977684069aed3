/** What is typed of an edge, length by length. */
export function parted(typed: string): string[] {
  return typed.split(';').filter((one) => one.trim() !== '');
}
