import { linkOf } from '../../../src/app/garment/share-link.ts';
import { begin } from '../../../src/garment/actions/state.ts';
import { writeBackup } from '../../../src/garment/backup/backup.ts';
import { type SharedGarment, sharedGarment } from '../../../src/garment/share/shared.ts';
import { damaged } from './changed-records.ts';
import type { Dice } from './dice.ts';
import { KNOWN } from './known.ts';
import { randomGarment } from './random-garment.ts';

const WISH = { bodies: false, notes: false, times: false, goOn: true, knownOnly: true };
/** Where a link begins that hands a garment on. */
export const PLACE = '#/garments/receive/';

/** Garments to do harm to: making one takes longer than opening it. */
const GARMENTS = Array.from({ length: 40 }, (_, i) =>
  sharedGarment(begin(randomGarment(i + 1), KNOWN), WISH, 'new', () => 'made'),
);
const LINKS = await Promise.all(GARMENTS.map(linkOf));
const handedOn = (seed: number) => GARMENTS[seed % GARMENTS.length] as SharedGarment;
const linked = (seed: number) => LINKS[seed % LINKS.length] as string;

/** A link that was damaged, or made to do harm. @param seed which garment it is made of */
export async function hostileLink(d: Dice, seed: number): Promise<string> {
  const garment = handedOn(seed);
  const link = linked(seed);
  const way = d.int(0, 8);
  if (way === 0) {
    return link.slice(0, d.int(PLACE.length, link.length - 1));
  }
  if (way <= 2) return flipped(d, link, PLACE.length);
  if (way === 3) return link.replace('/1.', `/${d.of(['2', '99', '1e9', '-1'])}.`);
  if (way === 4) {
    const letters = Array.from({ length: d.int(0, 300) }, () =>
      String.fromCharCode(d.int(33, 0x2fff)),
    );
    return PLACE + letters.join('');
  }
  // What is well packed, with a right sum, and yet no garment.
  return linkOf(hostileRecord(d, garment));
}

/** A record that says what no record of ours does. */
function hostileRecord(d: Dice, garment: SharedGarment): SharedGarment {
  const text = JSON.stringify(garment);
  if (d.chance(0.4)) return inJson(damaged(garment, d)) ?? garment;
  const places = [...text.matchAll(/:(?=["{[\d])/g)].map(({ index }) => index);
  const at = d.of(places) + 1;
  const rest = text.slice(at).replace(/^("(?:[^"\\]|\\.)*"|-?[\d.]+|true|false)/, '');
  const value = d.of(HOSTILE);
  try {
    return JSON.parse(
      text.slice(0, at) + value + (rest === text.slice(at) ? `,"x":${rest}` : rest),
    );
  } catch {
    return garment;
  }
}

/** What can't be written as JSON can't be handed on, either. */
function inJson(record: unknown): SharedGarment | undefined {
  try {
    return JSON.parse(JSON.stringify(record));
  } catch {
    return undefined;
  }
}

const HOSTILE = [
  '1e308',
  '-1e308',
  '1e999',
  '""',
  '[]',
  'null',
  '{"__proto__":{"x":1}}',
  '{"constructor":{"prototype":1}}',
  '[{"link":{"work":"w1","output":"allowance"}}]',
  '[{"link":{"quantity":"__proto__"}}]',
  `"${'x'.repeat(5000)}"`,
  `[${'['.repeat(200)}${']'.repeat(200)}]`,
  '[{"put":1e300,"kind":"run","was":{"quantity":"q1"}}]',
];

/** A file that was damaged, or made to do harm. @param seed which garment it is made of */
export function hostileFile(d: Dice, seed: number): string {
  const garment = handedOn(seed);
  const text = writeBackup([d.chance(0.5) ? garment : hostileRecord(d, garment)]);
  const way = d.int(0, 5);
  if (way === 0) return text.slice(0, d.int(0, text.length));
  if (way <= 2) return flipped(d, text, 0);
  if (way === 3) return text.replace('"version":1', `"version":${d.of(['2', '"1"', '1e9', '-1'])}`);
  if (way === 4) return text.replace('thumbrule', d.of(['other', '__proto__', '']));
  return text;
}

function flipped(d: Dice, text: string, from: number): string {
  let now = text;
  for (let i = d.int(1, 4); i > 0; i--) {
    const at = d.int(from, now.length - 1);
    now =
      now.slice(0, at) +
      String.fromCharCode(now.charCodeAt(at) ^ (1 << d.int(0, 6))) +
      now.slice(at + 1);
  }
  return now;
}
