import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Where Chromium usually is, on Linux and on a Mac. */
const USUAL = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/**
 * The Chromium the tests drive: CHROMIUM_PATH when it is set, else the first one that runs.
 *
 * @returns {string | undefined}
 */
export function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named) return runs(named) ? named : undefined;
  const onPath = (process.env.PATH ?? '')
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...USUAL, ...onPath].find(runs);
}

/**
 * Some systems ship a `chromium-browser` that only says what to install, so a
 * file that is there is also asked for its version.
 *
 * @param {string} path
 */
function runs(path) {
  try {
    accessSync(path, constants.X_OK);
  } catch {
    return false;
  }
  return spawnSync(path, ['--version'], { timeout: 20_000, stdio: 'ignore' }).status === 0;
}
