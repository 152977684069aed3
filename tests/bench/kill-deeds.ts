/** What is done on a device until its browser is killed. */
export const DEEDS = ['new garments', 'Made', 'settled', 'pending'] as const;
export type Deed = (typeof DEEDS)[number];

/** What a page says of it on its console: what it begins, and what the app says is kept. */
export type Told = readonly ['begins' | 'kept', text: string];

/** Each text that is typed is another one. */
export interface Doing {
  deed: Deed;
  round: number;
}

/** What is typed into the depth after a text: the next tenth of a millimetre. */
export function textAfter(text: string): string {
  const [whole = '', tenths = '0'] = text.split(' mm + ');
  return `${whole} mm + ${(Math.round(Number.parseFloat(tenths) * 10) + 1) / 10} mm`;
}

/**
 * Does one thing again and again by the app's own screens, and says so. Runs in the page, and is
 * written out whole there: it can use nothing from around it.
 */
export async function doUntilKilled({ deed, round }: Doing): Promise<void> {
  const tell = (...told: Told) => console.log(JSON.stringify(told));
  const soon = () => new Promise((wake) => setTimeout(wake, 1));
  const until = async <Value>(look: () => Value | null | undefined | false): Promise<Value> => {
    for (;;) {
      const seen = look();
      if (seen) return seen;
      await soon();
    }
  };
  const field = (at: string) => until(() => document.querySelector<HTMLInputElement>(at));
  const type = async (input: HTMLInputElement, text: string) => {
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await soon();
  };
  /** The app warns before it is closed as long as anything is not on the disk. */
  const isKept = () => {
    const closing = new Event('beforeunload', { cancelable: true });
    dispatchEvent(closing);
    return !closing.defaultPrevented;
  };

  const makeGarment = async (name: string) => {
    const input = await field('.garments form input[type=text]');
    tell('begins', name);
    await type(input, name);
    input.form?.requestSubmit();
    await until(() => location.hash.startsWith('#/garments/open'));
    history.back();
    await until(() => document.querySelector(`article[aria-label="${name}"]`));
    tell('kept', name);
  };
  const pressMade = async (press: string) => {
    const key = await until(() => document.querySelector<HTMLElement>('.next-key .made'));
    // Its words have to stand for a while.
    await new Promise((wake) => setTimeout(wake, 420));
    if (key.closest<HTMLElement>('.next-key')?.dataset.kind !== 'step') throw new Error('no step');
    tell('begins', press);
    key.click();
    // A press that is for looking at what it hangs on first keeps nothing.
    if (isKept()) return;
    await until(isKept);
    tell('kept', press);
  };
  const typeDepth = async (text: string, settles: boolean) => {
    const input = await field('.garment-work input[name=depth]');
    tell('begins', text);
    await type(input, text);
    await until(isKept);
    if (settles) {
      input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
      await until(isKept);
      input.focus();
    }
    tell('kept', text);
  };

  for (let i = 0; ; i++) {
    if (deed === 'new garments') await makeGarment(`round ${round} garment ${i}`);
    else if (deed === 'Made') await pressMade(`${round} ${i}`);
    else await typeDepth(`${20 + round} mm + ${i / 10} mm`, deed === 'settled');
  }
}
