/** What a walk did, and where it ended. */
export interface Walked {
  pressed: readonly string[];
  /** Nothing that can be seen or pressed is left, or the app said that it is broken. */
  stuck?: string;
}

/**
 * Presses at random whatever a thumb could reach on the screen, `count` times, and types into what
 * is asked. Runs in the page, so it is given all it needs.
 */
export async function pressAtRandom({
  seed,
  count,
}: {
  seed: number;
  count: number;
}): Promise<Walked> {
  /** A small generator, so that a walk can be gone again. */
  let state = seed >>> 0;
  const next = (below: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
  const TEXTS = [
    '6',
    '63',
    '63.0',
    '1 1/2',
    '12,5',
    '-3',
    '0',
    '3/0',
    '9999999',
    'x',
    '',
    '2 × 4.5',
    '١٢',
  ];
  const pressed: string[] = [];

  for (let k = 0; k < count; k++) {
    const targets = await somethingReachable();
    const target = targets[next(targets.length)];
    if (!target) return { pressed, stuck: `nothing to press at ${location.hash}` };
    pressed.push(nameOf(target));
    if (target instanceof HTMLInputElement && /^(text|search|number)$/.test(target.type))
      typeInto(target);
    else press(target);
    await painted();
    const broken = document.querySelector('main.waiting [role=alert]');
    if (broken) return { pressed, stuck: broken.textContent ?? 'broken' };
  }
  return { pressed };

  /** A screen may still be on its way, and what it has may lie further down. */
  async function somethingReachable(): Promise<HTMLElement[]> {
    for (let frame = 0; frame < 600; frame++) {
      if (frame > 60 || next(4) === 0) scrollOn();
      const found = reachable();
      if (found.length > 0) return found;
      await painted();
    }
    return [];
  }

  function scrollOn(): void {
    for (const one of document.querySelectorAll('*')) {
      if (one.scrollHeight > one.clientHeight) one.scrollTop = next(one.scrollHeight);
    }
  }

  /** What is on the screen, can be pressed, and has nothing over its middle. */
  function reachable(): HTMLElement[] {
    const all = document.querySelectorAll<HTMLElement>(
      'button, a[href^="#"], input, summary, select',
    );
    return [...all].filter((one) => {
      if (one.matches(':disabled, [aria-disabled=true], [type=file]')) return false;
      const { left, top, width, height } = one.getBoundingClientRect();
      const over = document.elementFromPoint(left + width / 2, top + height / 2);
      return (
        over !== null &&
        (one === over || one.contains(over) || one.closest('label')?.contains(over) === true)
      );
    });
  }

  function nameOf(one: HTMLElement): string {
    return (
      (one.getAttribute('aria-label') ?? one.textContent ?? '').trim().slice(0, 40) || one.tagName
    );
  }

  function press(one: HTMLElement): void {
    for (const what of ['pointerdown', 'pointerup']) {
      one.dispatchEvent(
        new PointerEvent(what, { bubbles: true, isPrimary: true, pointerType: 'touch' }),
      );
    }
    one.focus();
    one.click();
  }

  function typeInto(one: HTMLInputElement): void {
    one.focus();
    one.setRangeText(TEXTS[next(TEXTS.length)] ?? '', 0, one.value.length, 'end');
    one.dispatchEvent(new InputEvent('input', { bubbles: true }));
    if (next(2) === 0) one.form?.requestSubmit();
  }

  /** After the next paint, and what follows it. */
  function painted(): Promise<void> {
    return new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  }
}
