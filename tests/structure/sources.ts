import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A file of ours: its path from the project's folder, with `/`, and its text without comments. */
export interface Source {
  path: string;
  code: string;
}

/** Every TypeScript file under a folder, in order. */
export function sourcesIn(folder: string): Source[] {
  return filesIn(folder)
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => ({ path, code: withoutComments(readFileSync(join(ROOT, path), 'utf8')) }));
}

/** Every file under a folder, in order, from the project's folder, with `/`. */
export function filesIn(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(ROOT.length).replaceAll('\\', '/'))
    .sort();
}

/** Comments may say anything; strings are kept, since imports are written in them. */
export function withoutComments(text: string): string {
  const stringOrComment =
    /('(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`)|\/\*[\s\S]*?\*\/|\/\/[^\n]*/g;
  return text.replace(stringOrComment, (_, string: string | undefined) => string ?? ' ');
}

/** Words in strings are for the maker, not for the machine. */
export function withoutStrings(code: string): string {
  return code.replace(/'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"/g, "''");
}

/** What a file asks for: imports of every kind, and `new URL('./…')`. */
export function askedFor(code: string): string[] {
  // A text that ends in “from” asks for nothing: the word stands by itself.
  const imports = /(?:[\s}*]from|\bimport)\s*\(?\s*['"]([^'"\n]+)['"]/g;
  const urls = /\bnew\s+URL\(\s*['"](\.[^'"]*)['"]/g;
  return [...code.matchAll(imports), ...code.matchAll(urls)].map((found) => found[1] as string);
}

/** How words are asked for from outside their folder, in whatever language: see package.json. */
const WORDS = '#words/';

/** Whether what is asked for is a file of ours. */
export function isOurs(asked: string): boolean {
  return asked.startsWith('.') || asked.startsWith(WORDS);
}

/** The path, from the project's folder, that an import in `from` leads to, `?inline` and the like left out. */
export function leadsTo(from: string, asked: string): string {
  if (asked.startsWith(WORDS)) return `src/words/en/${asked.slice(WORDS.length)}`;
  return posix.join(dirname(from), asked.replace(/\?\w+$/, ''));
}
