// What a test gets for `vitest` while mutants are tried: it is only put down, and run by runner.mjs.
import { relative } from 'node:path';
import { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = chai.expect;

const place = { file: '', path: [] };
const putDown = [];

export function test(name, run) {
  const id = `${relative(process.cwd(), place.file)}#${[...place.path, name].join(' > ')} (${putDown.length})`;
  putDown.push({ id, name: id, file: place.file, run });
}
test.each = (rows) => (name, run) => {
  for (const row of rows) test(name, () => (Array.isArray(row) ? run(...row) : run(row)));
};
test.skipIf = (skipped) => (skipped ? () => {} : test);

export function describe(name, body) {
  place.path.push(name);
  body();
  place.path.pop();
}

/** The tests of a file: what importing it puts down. */
export async function testsOf(file, load) {
  place.file = file;
  putDown.length = 0;
  await load();
  return [...putDown];
}
