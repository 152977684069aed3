import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from './sources.ts';

/** A stretch of a file as it is quoted. */
interface Quote {
  path: string;
  /** What follows each other in the file; between them something is left out. */
  parts: readonly string[];
}

/** Code quoted in a text: its first line names the file, `// …` stands for what is left out. */
function quotesIn(text: string): Quote[] {
  return [...text.matchAll(/^```ts\n\/\/ (\S+)\n([\s\S]*?)^```$/gm)].map(
    ([, path = '', code = '']) => ({
      path,
      parts: code.split(/^ *\/\/ …\n/m),
    }),
  );
}

/** The first part that doesn't stand in the file after those before it; undefined where all do. */
function missing({ parts }: Quote, file: string): string | undefined {
  let from = 0;
  return parts.find((part) => {
    const at = file.indexOf(part.trimEnd(), from);
    from = at + part.length;
    return at < 0;
  });
}

const text = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');

test('the code that developers are shown is the code there is', () => {
  const quotes = quotesIn(text);
  const blocks = text.match(/^```ts$/gm) ?? [];
  expect(quotes).toHaveLength(blocks.length);
  expect(quotes.length).toBeGreaterThan(5);
  for (const quote of quotes) {
    const file = readFileSync(join(ROOT, quote.path), 'utf8');
    expect(missing(quote, file), quote.path).toBeUndefined();
  }
});

test('code that was changed since is seen, and code out of order', () => {
  const [quote] = quotesIn('```ts\n// a.ts\nconst a = 1;\n// …\nconst c = 3;\n```\n');
  const file = 'const a = 1;\nconst b = 2;\nconst c = 3;\n';
  if (!quote) throw new Error('the quote is not read');
  expect(missing(quote, file)).toBeUndefined();
  expect(missing(quote, file.replace('3', '4'))).toContain('const c');
  expect(missing(quote, 'const c = 3;\nconst a = 1;\n')).toContain('const c');
});
