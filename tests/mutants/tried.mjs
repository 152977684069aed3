// What was found out of each mutant, kept from run to run: a run that was stopped goes on where it
// was, and after a change only what it can have changed is tried again. A line is written as soon
// as it is known, so that nothing is lost when the process ends.
import { relative, resolve } from 'node:path';
import { addLine, linesIn } from '../line-file.mjs';
import { digest, SOURCES } from './tests-bundled.mjs';

export const FILE = resolve(SOURCES, 'node_modules/.cache/mutants-tried.jsonl');

/** The same mutant by the same name in every run. */
export function nameOf({ fileName, location: { start, end }, replacement }) {
  const file = relative(SOURCES, resolve(SOURCES, fileName));
  return `${file}:${place(start)}-${place(end)} ${replacement}`;
}

/** Stryker counts lines and columns from 0, editors from 1. */
const place = ({ line, column }) => `${line + 1}:${column + 1}`;

/** Why a mutant survives: these tests, made of these parts, with so many cases, and each of them passed. */
export const passing = (tests) =>
  digest([process.env.CASES ?? '', ...tests.map(({ id, parts }) => `${id} ${parts}`).sort()]);

export class Tried {
  #found = new Map(linesIn(FILE).map((found) => [found.mutant, found]));

  /** What is known of a mutant, be it still true or not. */
  of(mutant) {
    return this.#found.get(mutant);
  }

  note(found) {
    this.#found.set(found.mutant, found);
    addLine(FILE, found);
  }
}
