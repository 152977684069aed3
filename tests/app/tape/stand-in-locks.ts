interface Held {
  name: string;
  /** Takes the lock from who holds it: what it has asked for is rejected, its work goes on. */
  steal: () => void;
}

/** `navigator.locks` as one browser has it for all of its pages. Source: Web Locks API (W3C), 2 and 3. */
export class StandInLocks {
  #held: Held[] = [];
  #queue: { name: string; grant: () => void }[] = [];

  async request(name: string, ...given: unknown[]): Promise<unknown> {
    const work = given.at(-1) as () => unknown;
    const { steal = false, signal } = (given.length > 1 ? given[0] : {}) as LockOptions;
    const holder = this.#held.find((one) => one.name === name);
    if (steal) {
      this.#held = this.#held.filter((one) => one !== holder);
      holder?.steal();
    } else if (holder) await this.#turn(name, signal);
    return this.#hold(name, work);
  }

  #turn(name: string, signal: AbortSignal | undefined): Promise<void> {
    return new Promise((grant, refuse) => {
      const waiting = { name, grant };
      this.#queue.push(waiting);
      const giveUp = () => {
        this.#queue = this.#queue.filter((one) => one !== waiting);
        refuse(signal?.reason);
      };
      if (signal?.aborted) giveUp();
      signal?.addEventListener('abort', giveUp);
    });
  }

  #hold(name: string, work: () => unknown): Promise<unknown> {
    return new Promise((done, failed) => {
      const lost = new DOMException('stolen', 'AbortError');
      const held = { name, steal: () => failed(lost) };
      this.#held.push(held);
      Promise.resolve()
        .then(work)
        .then(done, failed)
        .finally(() => this.#letGo(held));
    });
  }

  #letGo(held: Held): void {
    if (!this.#held.includes(held)) return;
    this.#held = this.#held.filter((one) => one !== held);
    const next = this.#queue.findIndex(({ name }) => name === held.name);
    this.#queue.splice(next, next < 0 ? 0 : 1)[0]?.grant();
  }
}
