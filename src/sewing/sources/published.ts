/**
 * A published figure. Each stands once, in this folder, as an export of its own
 * with nothing run on loading, so that a page carries only the figures it uses.
 */
export interface Published<Value> {
  value: Value;
  /** A manual (government, university, textbook), or a trade or teaching page on the web. */
  grade: 'manual' | 'page';
}

/** A published figure that the app quotes: by name, since the words of it are a language's. */
export interface Quoted<Value, Name extends string> extends Published<Value> {
  quote: Name;
}
