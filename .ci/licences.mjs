import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const VIRTUAL = 'virtual:licences';

/** Shipped, though only the build needs the package: its data is put beside the app. */
const DATA = ['node_modules/@tesseract.js-data/eng'];

const TEXT_FILE = /^(licen[cs]e|copying|notice)/i;

/**
 * @typedef {object} Part
 * @property {string} name
 * @property {string} version
 * @property {string} licence the licence's short name
 * @property {string} text the licence as the package brings it; '' where it brings none
 */

/**
 * Everything that a phone may be given, with its licence, read from the packages themselves:
 * what the app depends on and all that this depends on in turn.
 *
 * @returns {Part[]}
 */
export function shippedParts() {
  const { packages } = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8'));
  return Object.entries(packages)
    .filter(([path, { dev, link }]) => path !== '' && !link && (!dev || DATA.includes(path)))
    .filter(([path]) => existsSync(join(ROOT, path)))
    .map(([path]) => partAt(path))
    .sort((one, other) => one.name.localeCompare(other.name, 'en'));
}

/**
 * @param {string} path
 * @returns {Part}
 */
function partAt(path) {
  const folder = join(ROOT, path);
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  if (typeof license !== 'string') throw new Error(`${path} names no licence`);
  const text = readdirSync(folder)
    .filter((file) => TEXT_FILE.test(file))
    .map((file) => readFileSync(join(folder, file), 'utf8').trim())
    .join('\n\n');
  return { name, version, licence: license, text };
}

/** The package a module of the bundle is from, if it is from one. @param {string} id */
function packageOf(id) {
  return /.*node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)/.exec(id)?.[1]?.replaceAll('\\', '/');
}

/**
 * The licences of everything shipped as the module `virtual:licences`; a build that bundles a
 * package which isn't listed fails.
 *
 * @returns {import('vite').Plugin}
 */
export function licences() {
  return {
    name: 'licences',
    resolveId: (id) => (id === VIRTUAL ? `\0${VIRTUAL}` : undefined),
    load: (id) =>
      id === `\0${VIRTUAL}` ? `export const PARTS = ${JSON.stringify(shippedParts())};` : undefined,
    generateBundle(_, bundle) {
      const listed = new Set(shippedParts().map(({ name }) => name));
      for (const chunk of Object.values(bundle)) {
        if (chunk.type !== 'chunk') continue;
        for (const id of chunk.moduleIds) {
          const name = packageOf(id);
          // The helper's code is replaced by ours (vite.config.ts, plain-imports).
          if (name && name !== 'vite' && !listed.has(name)) {
            this.error(`${name} is in ${chunk.fileName}, and its licence is not listed`);
          }
        }
      }
    },
  };
}
