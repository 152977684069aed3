import { expect, test } from 'vitest';
import { sourcesIn } from './sources.ts';

/** What a screen names no source by: an address on the web, a publisher, a university, a shop. */
const NOT_SHOWN: readonly RegExp[] = [
  /[a-z0-9-]{2,}\.(com|org|net|info|edu|gov|eu|uk|ca|cz|de|it|jp|is|wiki|blog)\b/i,
  /\b(https?:|www\.)/i,
  /\b(Butterick|Goodheart|Willcox|Coats|Routledge|University|Griswold|Dillmont|McGlauflin)\b/,
];

const STRING = /'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`/g;

/** Text in the code that names a publisher or an address; the names of files asked for are none. */
function named(code: string): string[] {
  const said = code.replace(/^\s*(import|export)\b[^;]*\bfrom\b[^;]*;/gm, '').match(STRING) ?? [];
  return said.filter((text) => NOT_SHOWN.some((sign) => sign.test(text)));
}

test('no text of the app names an address, a publisher that trades, or a shop', () => {
  const found = sourcesIn('src').flatMap(({ path, code }) =>
    named(code)
      .filter((text) => !text.includes('www.w3.org/')) // the namespace of SVG, which nobody is shown
      .map((text) => `${path}: ${text}`),
  );
  expect(found).toEqual([]);
});

test('such a name is seen, and a plain title is not', () => {
  expect(named("source: 'somewhere-else.com, lacing'")).toHaveLength(1);
  expect(named("source: 'Some University, Guide 3'")).toHaveLength(1);
  expect(named("source: 'a teaching page on lacing, 2008'")).toEqual([]);
});
