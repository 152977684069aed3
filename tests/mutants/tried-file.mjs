// Where it is kept what was found out of each mutant: a line of JSON for each, the last one counts.
import { appendFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';

/** Where the sources are as they are written: the copy that is worked on has the mutants in them. */
export const SOURCES = resolve(import.meta.dirname, '../..');

const FILE = resolve(SOURCES, 'node_modules/.cache/mutants-tried.jsonl');

export const lineOf = (found) => JSON.stringify(found);

/** Adds a line; where the process was ended in the middle of one, it begins on a new one. */
export function addLine(line) {
  mkdirSync(dirname(FILE), { recursive: true });
  appendFileSync(FILE, `\n${line}\n`);
}

export function allFound() {
  if (!existsSync(FILE)) return [];
  return readFileSync(FILE, 'utf8').split('\n').flatMap(foundIn);
}

function foundIn(line) {
  try {
    return line === '' ? [] : [JSON.parse(line)];
  } catch {
    return []; // cut off: its mutant is tried again
  }
}
