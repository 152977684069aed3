import type { garmentFailedWords } from '#words/garment/garment-failed-words.ts';
import type { garmentWords } from '#words/garment/garment-words.ts';

/**
 * One thing a maker does to a garment in a tab. Garments on the list are known by how
 * their name starts, since the other tab may be giving them another ending.
 */
export type Order =
  | { deed: 'keep'; garment: string; name: string; depth: string }
  | { deed: 'change'; garment: string; name: string; depth: string }
  | { deed: 'rename'; start: string; name: string }
  | { deed: 'put away and bring back'; start: string };

/**
 * An order that the app confirmed, or that could not be done, since the garment lay in the bin
 * just then. Times by the machine's clock, in ms.
 */
export interface Done {
  order: Order;
  from: number;
  to: number;
  confirmed: boolean;
}

type Words = Pick<typeof garmentWords, 'rename' | 'bringBack'> & {
  putAway: string;
  /** What the key to undo begins with. */
  undo: string;
  keepIt: string;
  failed: typeof garmentFailedWords & { gone: string };
};

export interface Wanted {
  orders: readonly Order[];
  words: Words;
  /** Where calculations are kept already: `GARMENT.KEPT` by their name. */
  places: Readonly<Record<string, string>>;
}

/**
 * Does one order after another by the app's own screens, as fast as they take it. Runs in the
 * page, and is written out whole there: it can use nothing from around it.
 *
 * @throws Error when a screen doesn't come to an end with an order
 */
export async function workThrough({ orders, words, places }: Wanted): Promise<Done[]> {
  const where = new Map(Object.entries(places));
  const until = async <Value>(look: () => Value | undefined | null | false): Promise<Value> => {
    for (const late = Date.now() + 20_000; ; ) {
      const seen = look();
      if (seen) return seen;
      if (Date.now() > late) throw new Error(`waited in vain at ${location.hash} for ${look}`);
      await new Promise((wake) => setTimeout(wake, 1));
    }
  };
  const rendered = () => new Promise((wake) => setTimeout(wake, 0));
  const button = (within: ParentNode, face: string) =>
    [...within.querySelectorAll('button')].find(({ textContent }) => textContent === face);
  const give = async (field: HTMLInputElement | HTMLSelectElement, value: string, kind: string) => {
    field.value = value;
    field.dispatchEvent(new Event(kind, { bubbles: true }));
    await rendered();
  };
  const refused = () =>
    [...document.querySelectorAll('[role=status]')].some(({ textContent }) =>
      Object.values(words.failed).some((words) => words === textContent),
    );

  /** Opens the form for keeping; what is typed there before comes by the address. */
  const openForm = async (typed: Record<string, string>) => {
    location.hash = '#/all';
    await until(() => document.querySelector('.home'));
    location.hash = `#/hem/keep?${new URLSearchParams({ u: 'cm', ...typed })}`;
    return until(() => document.querySelector<HTMLFormElement>('form.lower'));
  };
  const keepIt = async (name: string, expected?: string) => {
    await until(() => button(document, words.keepIt))?.then((key) => key.click());
    const place = await until(() =>
      location.hash.startsWith('#/hem?')
        ? new URLSearchParams(location.hash.split('?')[1]).get('kept')
        : refused() && 'refused',
    );
    if (place === 'refused') return false;
    if (expected !== undefined && place !== expected) throw new Error(`kept at ${place}`);
    where.set(name, place);
    return true;
  };
  const openList = async () => {
    location.hash = '#/all';
    await until(() => document.querySelector('.home'));
    location.hash = '#/garments';
    await until(() => document.querySelector('.garments article h2'));
  };
  const card = (start: string) =>
    document.querySelector<HTMLElement>(`article[aria-label^="${start}"]`);
  const row = (within: ParentNode | null, start: string, face: string) =>
    [...(within?.querySelectorAll('li') ?? [])].find(
      (li) => li.textContent?.startsWith(start) && button(li, face),
    );
  const offersUndo = (start: string) =>
    [...document.querySelectorAll('button')].some((key) =>
      key.textContent?.startsWith(words.undo + start),
    );
  /** What else is done with a garment folds out of one at a time. */
  const opened = async (start: string) => {
    await openList();
    card(start)?.querySelector<HTMLElement>('h2 [aria-expanded=false]')?.click();
    await rendered();
    return card(start) ?? document.createElement('p'); // it lies in the bin just now
  };

  const obey = async (order: Order): Promise<boolean> => {
    switch (order.deed) {
      case 'keep': {
        const form = await openForm({ depth: order.depth });
        const choice = [...form.querySelectorAll('select')].find((one) =>
          [...one.options].some(({ value }) => value === order.garment),
        );
        if (!choice) return false; // it lies in the bin just now
        await give(choice, order.garment, 'change');
        const name = form.querySelector<HTMLInputElement>('input[type=text]');
        if (name) await give(name, order.name, 'input');
        return keepIt(order.name);
      }
      case 'change': {
        const kept = where.get(order.name);
        if (!kept) return false; // it was refused when it was to be kept
        const form = await openForm({ depth: order.depth, kept });
        if (form.querySelector<HTMLInputElement>('input[type=text]')?.value !== order.name) {
          return false; // its garment lies in the bin just now
        }
        return keepIt(order.name, kept);
      }
      case 'rename': {
        const key = button(await opened(order.start), words.rename);
        const before = card(order.start)?.ariaLabel;
        if (!key) return false;
        key.click();
        const inForm = 'form input[type=text]';
        // The other tab may put it away meanwhile: the form goes with it, and isn't there when it is back.
        const field = await until(
          () => card(order.start)?.querySelector<HTMLInputElement>(inForm) ?? !key.isConnected,
        );
        if (field === true) return false;
        await give(field, order.name, 'input');
        if (!field.isConnected) return false;
        field.form?.requestSubmit();
        await until(() => card(order.start)?.ariaLabel !== before || refused());
        return !refused();
      }
      case 'put away and bring back': {
        const key = button(await opened(order.start), words.putAway);
        if (!key) return false;
        key.click();
        // The other tab may bring it back before it was seen to be gone.
        await until(() => !card(order.start) || refused() || offersUndo(order.start));
        if (refused()) return false;
        const back = await until(() => {
          const binned = row(document, order.start, words.bringBack);
          return card(order.start) || (binned && button(binned, words.bringBack));
        });
        if (back instanceof HTMLButtonElement) back.click();
        await until(() => card(order.start));
        return true;
      }
    }
  };

  const done: Done[] = [];
  for (const order of orders) {
    const from = Date.now();
    const confirmed = await obey(order);
    done.push({ order, from, to: Date.now(), confirmed });
  }
  return done;
}
