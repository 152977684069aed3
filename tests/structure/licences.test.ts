import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { shippedParts } from '../../.ci/licences.mjs';
import { ROOT } from './sources.ts';

const PARTS = shippedParts();

/** Packages that bring no text of their licence; checked by hand. */
const WITHOUT_TEXT = ['@tesseract.js-data/eng', 'tr46'];

test('everything the app depends on, and the engine’s data, is listed with its licence', () => {
  const pins = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  const names = PARTS.map(({ name }) => name);
  for (const name of [...Object.keys(pins.dependencies), '@tesseract.js-data/eng']) {
    expect(names).toContain(name);
  }
  // What these depend on in turn, and no tool of the build.
  expect(names).toContain('tesseract.js-core');
  expect(names).not.toContain('vite');
});

test('each allows what is done with it, and its text is there', () => {
  for (const { name, licence, text } of PARTS) {
    expect(['MIT', 'Apache-2.0', 'BSD-2-Clause', 'BSL-1.0', '0BSD'], name).toContain(licence);
    if (!WITHOUT_TEXT.includes(name)) expect(text.length, name).toBeGreaterThan(500);
  }
});
