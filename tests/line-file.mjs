// A file that long runs write what they found to as soon as they know it, a line of JSON for each,
// so that a run that is stopped at any moment loses nothing and can go on.
import { appendFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';

/**
 * Adds something found; where the process was ended in the middle of a line, it begins on a new one.
 * @param {string} file
 * @param {object} found
 */
export function addLine(file, found) {
  mkdirSync(dirname(file), { recursive: true });
  appendFileSync(file, `\n${JSON.stringify(found)}\n`);
}

/**
 * Everything found so far; a line that was cut off is passed over: that is found anew.
 * @param {string} file
 * @returns {unknown[]}
 */
export function linesIn(file) {
  if (!existsSync(file)) return [];
  return readFileSync(file, 'utf8')
    .split('\n')
    .flatMap((line) => {
      try {
        return line === '' ? [] : [JSON.parse(line)];
      } catch {
        return [];
      }
    });
}
