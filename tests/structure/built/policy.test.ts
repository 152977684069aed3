import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';

/** What the page may do, by directive; whatever isn't named is refused. */
const POLICY: Readonly<Record<string, string>> = {
  'default-src': "'none'",
  // WebAssembly is the engine that reads numbers.
  'script-src': "'self' 'wasm-unsafe-eval'",
  'worker-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' blob: data:",
  'media-src': "'self' blob:",
  'connect-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
};

test('the page’s policy starts from nothing and names each thing it needs', () => {
  const html = readFileSync(join(inject('built'), 'index.html'), 'utf8');
  const [, content = ''] = /Content-Security-Policy"\s+content="([^"]+)"/.exec(html) ?? [];
  const directives = content.split('; ').map((one) => one.split(/ (.*)/s).slice(0, 2));
  expect(directives[0]).toEqual(['default-src', "'none'"]);
  expect(Object.fromEntries(directives)).toEqual(POLICY);
});
