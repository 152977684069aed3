import type { Maker } from './maker.ts';

/** Presses the key until it says that, and counts how often it made something. */
export async function makeUntil(maker: Maker, end: RegExp): Promise<number> {
  let made = 0;
  for (let said = await maker.said(); !end.test(said); said = await maker.said()) {
    if ((await maker.face()) === 'Made') made += 1;
    await maker.key();
  }
  return made;
}
