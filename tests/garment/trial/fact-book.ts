import type { Action } from '../../../src/garment/actions/act.ts';
import type { Done, State } from '../../../src/garment/actions/state.ts';
import type { Garment } from '../../../src/garment/record/record.ts';

type Facts = Readonly<Record<string, unknown>>;

/**
 * A book of what was made, kept beside a garment in the simplest way: each fact as a line of text
 * under its id, and of each press what stood in the lines it changed. It knows no steps and no numbers.
 */
export class FactBook {
  readonly #lines = new Map<string, string>();
  readonly #presses: { id: number; before: Map<string, string | undefined> }[] = [];

  constructor({ record }: State) {
    for (const [id, fact] of Object.entries(record.facts)) this.#lines.set(id, text(fact));
  }

  /** Writes down what an action may do to facts, and says what else has happened to them. */
  faultsAfter(action: Action, { state, refused }: Done, before: State): string[] {
    const { facts } = state.record;
    const was = new Map(this.#lines);
    if (!refused) this.#write(action, facts, before);
    const ids = new Set([...this.#lines.keys(), ...Object.keys(facts)]);
    const moved = [...ids].filter((id) => (this.#lines.get(id) ?? '') !== text(facts[id]));
    this.#note(was, state);
    return [...moved.map((id) => `fact ${id}`), ...lost(action, before.record, state.record)];
  }

  #write(action: Action, facts: Facts, { record, log }: State): void {
    const lines = this.#lines;
    const copy = (ids: readonly string[]) => {
      for (const id of ids) lines.set(id, text(facts[id]));
    };
    const fresh = Object.keys(facts).filter((id) => !(id in record.facts));
    if (action.do === 'make') {
      const own = (id: string) => id === action.id || id.startsWith(`${action.id}-`);
      const several = action.upTo !== undefined || action.also !== undefined;
      copy(several ? fresh.filter(own) : [action.id]);
    } else if (action.do === 'make before') {
      copy(fresh.filter((id) => id === action.id || id.startsWith(`${action.id}-`)));
    } else if (action.do === 'unmake') lines.delete(action.fact);
    else if (action.do === 'measure' && 'fact' in action) {
      const fact = { ...(record.facts[action.fact] as object), measured: action.measured };
      lines.set(action.fact, text(fact));
    } else if (action.do === 'measure') {
      const home = `${action.quantity}||`;
      const at = Object.keys(record.facts).find((id) => homeIn(record.facts[id]) === home);
      copy([at ?? action.id]);
    } else if (action.do === 'undo') {
      // What was typed settles first, and no fact hangs on it.
      if (log.some(({ id }) => id === action.change)) this.#takeBack(action.change);
    }
  }

  #takeBack(id: number | undefined): void {
    const at = this.#presses.findIndex((press) => press.id === id);
    const [press] = at < 0 ? [] : this.#presses.splice(at, 1);
    for (const [fact, line] of press?.before ?? []) {
      if (line === undefined) this.#lines.delete(fact);
      else this.#lines.set(fact, line);
    }
  }

  /** A press that is new in the log is one that can be taken back. */
  #note(was: ReadonlyMap<string, string>, { log }: State): void {
    const last = log.at(-1);
    if (!last?.press || this.#presses.some(({ id }) => id === last.id)) return;
    const ids = new Set([...was.keys(), ...this.#lines.keys()]);
    const changed = [...ids].filter((id) => was.get(id) !== this.#lines.get(id));
    const before = new Map(changed.map((id) => [id, was.get(id)]));
    if (changed.length > 0) this.#presses.push({ id: last.id, before });
  }
}

/** Works and numbers that have gone without being taken off. */
function lost(action: Action, before: Garment, after: Garment): string[] {
  if (action.do === 'undo') return [];
  const removed = action.do === 'remove' ? action.quantity : undefined;
  return (['works', 'quantities'] as const).flatMap((map) =>
    Object.keys(before[map])
      .filter((id) => !(id in after[map]) && id !== removed)
      .map((id) => `${map} ${id}`),
  );
}

function text(fact: unknown): string {
  return fact === undefined ? '' : JSON.stringify(fact);
}

function homeIn(fact: unknown): unknown {
  return (fact as { home?: unknown } | null)?.home;
}
