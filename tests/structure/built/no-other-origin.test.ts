import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { shippedParts } from '../../../.ci/licences.mjs';

const ADDRESS = /\b(?:https?|wss?|ftp):\/\/[^\s"'`<>)\\]+/gi;

/**
 * Names, not addresses: XML namespaces say which language a drawing (W3C), or what is told
 * about a PDF (W3C, Dublin Core, XMP, PDF/A), is in and are never fetched.
 */
const NAMES =
  /^https?:\/\/(www\.w3\.org\/(1998\/Math\/MathML|1999\/xhtml|1999\/xlink|1999\/02\/22-rdf-syntax-ns#|2000\/svg|2000\/xmlns\/?|XML\/1998\/namespace)|purl\.org\/dc\/elements\/1\.1\/|ns\.adobe\.com\/(xap\/1\.0|pdf\/1\.3)\/|www\.aiim\.org\/pdfa\/ns\/id\/)$/;

/**
 * Read by people, never fetched: where workbox's warning about its precache list is explained,
 * and where the PDF library is from.
 */
const READING = ['https://bit.ly/wb-precache', 'https://github.com/Hopding/pdf-lib'];

/** Addresses in the texts of licences, which are shown and never fetched. */
const IN_LICENCES = new Set(shippedParts().flatMap(({ text }) => text.match(ADDRESS) ?? []));

/** Addresses in a file that could be fetched from somewhere else. */
function addressesIn(text: string): string[] {
  const whole = text.match(ADDRESS) ?? [];
  const sameScheme = text.match(/(?:src|href)=["']?\/\/[^\s"'>]+|url\(\s*["']?\/\/[^)]+/gi) ?? [];
  return [...whole, ...sameScheme].filter(
    (address) => !NAMES.test(address) && !READING.includes(address) && !IN_LICENCES.has(address),
  );
}

test('what is built names no address but its own', () => {
  const built = inject('built');
  const files = readdirSync(built, { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\.(js|css|html|svg|webmanifest)$/.test(name),
  );
  expect(files.length).toBeGreaterThan(4);
  const found = files.flatMap((name) =>
    addressesIn(readFileSync(join(built, name), 'utf8')).map((address) => `${name}: ${address}`),
  );
  expect(found).toEqual([]);
});

test('an address is seen, however it is written', () => {
  expect(addressesIn('fetch("https://example.org/a")')).toEqual(['https://example.org/a']);
  expect(addressesIn('new WebSocket(`wss://example.org`)')).toEqual(['wss://example.org']);
  expect(addressesIn('<link href="//example.org/a.css">')).toHaveLength(1);
  expect(addressesIn('a { background: url(//example.org/a.png) }')).toHaveLength(1);
  expect(addressesIn('http://www.w3.org/2000/svg')).toEqual([]);
  expect(addressesIn('http://www.w3.org/Icons/valid.png')).toHaveLength(1);
});
