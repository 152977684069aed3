import { expect, test } from 'vitest';
import { type Source, sourcesIn, withoutComments, withoutStrings } from './sources.ts';

/** Folders whose answers depend on nothing but what they are given. */
const PURE = /^src\/(lengths|sewing|calculations?|tape|lay|garment|drawing)\//;

/**
 * What the compiler lets through, though an answer would then depend on more than its inputs.
 * The page itself is not among it: these folders' tsconfig files leave the DOM out.
 */
const OUTSIDE: ReadonlyArray<readonly [RegExp, string]> = [
  [/\bDate\b/, 'the clock'],
  [/\bMath\.random\b/, 'chance'],
  [/\bIntl\b|\.toLocale\w+/, "the phone's language"],
  [/\bglobalThis\b|\beval\b|\bFunction\(/, 'whatever happens to be around'],
  [/\bconsole\b/, 'somewhere to write'],
  [/^(export\s+)?let\b/m, 'what was asked before'],
];

function dependsOn({ path, code }: Source): string[] {
  const bare = withoutStrings(code);
  return OUTSIDE.filter(([sign]) => sign.test(bare)).map(
    ([, what]) => `${path} depends on ${what}`,
  );
}

test('arithmetic depends on nothing but its inputs', () => {
  const pure = sourcesIn('src').filter(({ path }) => PURE.test(path));
  expect(pure.length).toBeGreaterThan(10);
  expect(pure.flatMap(dependsOn)).toEqual([]);
});

test('each of these is seen, and words about it are not', () => {
  const seen = [
    'Date.now()',
    'Math.random()',
    'new Intl.NumberFormat()',
    '(5).toLocaleString()',
    'globalThis.x',
    'console.log(1)',
    'let last = 0;',
    'export let last = 0;',
  ];
  for (const code of seen) expect(dependsOn({ path: 'x.ts', code }), code).toHaveLength(1);

  const words = "// the Date of the window.\nconst words = 'document. Date Math.random';";
  expect(dependsOn({ path: 'x.ts', code: withoutComments(words) })).toEqual([]);
});
