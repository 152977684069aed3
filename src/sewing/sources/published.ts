/**
 * A published figure. Each stands once, in this folder, as an export of its own
 * with nothing run on loading, so that a page carries only the figures it uses.
 */
export interface Published<Value> {
  value: Value;
  /** What the source says, restated. */
  says: string;
  /**
   * As the screen says it: title, kind and year, never a publisher that still trades, a shop or
   * an address. The full reference stands in the comment above the figure.
   */
  source: string;
  /** A manual (government, university, textbook), or a trade or teaching page on the web. */
  grade: 'manual' | 'page';
}
