import { expect, test } from 'vitest';
import { readFile } from '../../src/app/garment/file.ts';
import { linkOf, readLink } from '../../src/app/garment/share-link.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { asOwn, readHanded } from '../../src/garment/share/read-shared.ts';
import type { SharedGarment } from '../../src/garment/share/shared.ts';
import { sheetOf } from '../../src/garment/sheet/sheet.ts';
import { dice } from './trial/dice.ts';
import { hostileFile, hostileLink, PLACE } from './trial/hostile.ts';
import { KNOWN } from './trial/known.ts';

/** A sample in the gate; `npm run hostile` tries ten thousand. */
const CASES = Number(process.env.HOSTILE ?? 60);
const FAULTS = ['newer', 'damaged', 'too-large', 'cant-unpack'];

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

async function packed(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  const data = new Uint8Array(await new Response(stream).arrayBuffer());
  return Buffer.from(data).toString('base64url');
}
