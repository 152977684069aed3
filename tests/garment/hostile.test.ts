import { expect, test } from 'vitest';
import { readFile } from '../../src/app/garment/file.ts';
import { linkOf, readLink } from '../../src/app/garment/share-link.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { writeBackup } from '../../src/garment/backup/backup.ts';
import { asOwn, readHanded } from '../../src/garment/share/read-shared.ts';
import { type SharedGarment, sharedGarment } from '../../src/garment/share/shared.ts';
import { sheetOf } from '../../src/garment/sheet/sheet.ts';
import { damaged } from './trial/changed-records.ts';
import { type Dice, dice } from './trial/dice.ts';
import { KNOWN } from './trial/known.ts';
import { randomGarment } from './trial/random-garment.ts';

/** A sample in the gate; `npm run hostile` tries ten thousand. */
const CASES = Number(process.env.HOSTILE ?? 60);
const WISH = { bodies: false, notes: false, times: false, goOn: true, knownOnly: true };
const FAULTS = ['newer', 'damaged', 'too-large', 'cant-unpack'];
const PLACE = '#/garments/receive/';

/** Garments to do harm to: making one takes longer than opening it. */
const GARMENTS = Array.from({ length: 40 }, (_, i) =>
  sharedGarment(begin(randomGarment(i + 1), KNOWN), WISH, 'new', () => 'made'),
);
const LINKS = await Promise.all(GARMENTS.map(linkOf));
const handedOn = (seed: number) => GARMENTS[seed % GARMENTS.length] as SharedGarment;
const linked = (seed: number) => LINKS[seed % LINKS.length] as string;

test(`of ${CASES} damaged and hostile links each is refused in words, or opens and can be worked with`, async () => {
  const told = new Map<string, number>();
  for (let seed = 1; seed <= CASES; seed++) {
    const link = await hostileLink(dice(seed), seed);
    const read = await readLink(link);
    const outcome = read.ok ? 'opened' : read.fault;
    told.set(outcome, (told.get(outcome) ?? 0) + 1);
    if (!read.ok) expect(FAULTS, `seed ${seed}`).toContain(read.fault);
    else workWith(asOwn(read.handed, 'own', 1));
  }
  console.log(Object.fromEntries(told));
  expect(told.get('damaged')).toBeGreaterThan(CASES / 10);
}, 3_600_000);

test(`of ${CASES} damaged and hostile files, too`, async () => {
  const { signal } = new AbortController();
  const told = new Map<string, number>();
  for (let seed = 1; seed <= CASES; seed++) {
    const text = hostileFile(dice(seed + 1e6), seed);
    const read = await readFile(new Blob([text]), { show: () => undefined, signal });
    const outcome = read.ok ? 'opened' : read.fault;
    told.set(outcome, (told.get(outcome) ?? 0) + 1);
    if (!read.ok) continue;
    for (const garment of read.garments) {
      const handed = readHanded(garment);
      if (handed.ok) workWith(asOwn(handed.handed, 'own', 1));
      else expect(FAULTS).toContain(handed.fault);
    }
  }
  console.log(Object.fromEntries(told));
}, 3_600_000);

test('a link that unpacks to more than a garment is given up half way', async () => {
  const bomb = await packed(new Uint8Array(20_000_000));
  const began = performance.now();
  expect(await readLink(`${PLACE}1.d.00000000.${bomb}`)).toEqual({ ok: false, fault: 'too-large' });
  expect(performance.now() - began).toBeLessThan(10_000);
});

test('a million works are refused, before any is looked at', async () => {
  const works = `{${Array.from({ length: 100_000 }, (_, i) => `"w${i}":{}`).join(',')}}`;
  const garment =
    JSON.parse(`{"version":3,"id":"a","name":"b","invented":false,"changed":1,"edits":1,
    "quantities":{},"works":${works},"facts":{},"begun":{},"decisions":{}}`) as SharedGarment;
  expect(await readLink(await linkOf(garment))).toMatchObject({ ok: false, fault: 'too-large' });
});

/** What would be done with it once it is opened. */
function workWith(garment: Parameters<typeof begin>[0]): void {
  const { answer } = begin(garment, KNOWN);
  sheetOf(garment, answer);
}

async function hostileLink(d: Dice, seed: number): Promise<string> {
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

function hostileFile(d: Dice, seed: number): string {
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

async function packed(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  const data = new Uint8Array(await new Response(stream).arrayBuffer());
  return Buffer.from(data).toString('base64url');
}
