/**
 * What a maker does in a tab to the garment in hand: presses Made, takes the last press back,
 * changes a field, or leaves what is typed there unsettled.
 */
export type HandOrder =
  | { deed: 'make' }
  | { deed: 'back' }
  | { deed: 'settle' | 'type'; work: string; field: string; text: string };

/** What came of it. Times by the machine's clock, in ms. */
export interface HandDone {
  order: HandOrder;
  from: number;
  to: number;
  /** The app kept it; what it refused, it said. */
  kept: boolean;
  /** The number that was made, or taken back, as it stood on the screen. */
  number?: string;
}

/**
 * Does one order after another as fast as the screens take it. Runs in the page, and is written
 * out whole there: it can use nothing from around it.
 * @throws Error when a screen doesn't come to an end with an order
 */
export async function workInHand(orders: readonly HandOrder[]): Promise<HandDone[]> {
  const soon = () => new Promise((wake) => setTimeout(wake, 1));
  const until = async <Value>(look: () => Value | null | undefined | false): Promise<Value> => {
    for (const late = Date.now() + 60_000; ; ) {
      const seen = look();
      if (seen) return seen;
      if (Date.now() > late) throw new Error(`waited in vain at ${location.hash} for ${look}`);
      await soon();
    }
  };
  const textOf = (what: string) => document.querySelector(what)?.textContent ?? '';
  const numberIn = (text: string) => /[\d.]+ cm/.exec(text)?.[0] ?? '';
  /** The app warns before it is closed as long as anything is not on the disk. */
  const isKept = () => {
    const closing = new Event('beforeunload', { cancelable: true });
    dispatchEvent(closing);
    return !closing.defaultPrevented;
  };
  const goTo = async (hash: string, shown: string) => {
    location.hash = hash;
    await until(() => document.querySelector(shown));
    await until(isKept);
    // What was kept by leaving is on the screen.
    await soon();
  };
  const said = async () => {
    await until(isKept);
    await soon();
    return document.querySelector('.in-hand .last .warning') === null;
  };

  /** Its words have to stand for a while: the other tab's presses change them, too. */
  const make = async () => {
    await goTo('#/garments/open?g=row', '.next-key .made');
    for (let tries = 0; tries < 40; tries++) {
      await new Promise((wake) => setTimeout(wake, 410));
      await until(isKept);
      const number = numberIn(textOf('.next-key .number'));
      document.querySelector<HTMLElement>('.next-key .made')?.click();
      // Just changed, or a press that is for looking at what it hangs on first.
      if (isKept()) continue;
      return { kept: await said(), number };
    }
    return { kept: false };
  };
  const back = async () => {
    await goTo('#/garments/open?g=row', '.next-key .made');
    const key = document.querySelector<HTMLElement>('.in-hand .last button');
    const number = numberIn(textOf('.in-hand .last p:not(.warning)'));
    if (!key || number === '') return { kept: false };
    key.click();
    if (isKept()) return { kept: false };
    return { kept: await said(), number };
  };
  const type = async ({ deed, work, field, text }: Extract<HandOrder, { text: string }>) => {
    const at = `.garment-work input[name=${field}]`;
    await goTo(`#/garments/open?g=row&w=${work}`, at);
    const input = document.querySelector<HTMLInputElement>(at);
    if (!input) return { kept: false };
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await until(isKept);
    await soon();
    if (deed === 'settle') {
      input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
      await until(isKept);
    }
    return { kept: true };
  };

  const done: HandDone[] = [];
  for (const order of orders) {
    const from = Date.now();
    const obeyed = order.deed === 'make' ? make() : order.deed === 'back' ? back() : type(order);
    done.push({ order, from, ...(await obeyed), to: Date.now() });
  }
  await goTo('#/garments/open?g=row', '.next-key .made');
  return done;
}
