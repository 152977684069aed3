import { expect, test } from 'vitest';
import { ROOMS, roomOf } from './rooms.ts';
import { askedFor, filesIn, type Source, sourcesIn } from './sources.ts';
import { brokenWalls, importCircles, onlyHandsOn, WALLS } from './walls.ts';

const house = [...sourcesIn('src'), ...sourcesIn('service-worker')];

function file(path: string, ...lines: string[]): Source {
  return { path, code: lines.join('\n') };
}

test('nobody imports through a wall', () => {
  expect(house.length).toBeGreaterThan(20);
  const styles = filesIn('src').filter((path) => path.endsWith('.css'));
  expect(brokenWalls(house, styles)).toEqual([]);
});

test('a text that ends in “from” is no import', () => {
  expect(askedFor("const ends = ['from', 'to']; const key = 'counting-from' + ' | ';")).toEqual([]);
  expect(askedFor("import {a} from './a.ts'; export * from'./b.ts'; import('./c.ts')")).toEqual([
    './a.ts',
    './b.ts',
    './c.ts',
  ]);
});

test('nobody imports in a circle', () => {
  expect(importCircles(house)).toEqual([]);
});

test('no file only hands on what another has', () => {
  expect(house.filter(onlyHandsOn).map(({ path }) => path)).toEqual([]);
});

test('every folder of the house has its walls', () => {
  const folders = new Set(filesIn('src').map((path) => path.split('/').slice(0, 2).join('/')));
  expect([...folders].filter((folder) => !WALLS[folder])).toEqual([]);
});

test('every import names its file, so that the walls can be seen', () => {
  const hidden = house.filter(({ code }) => /import\.meta\.glob|\bimport\(\s*[^'"\s]/.test(code));
  expect(hidden.map(({ path }) => path)).toEqual([]);
});

test('a broken wall is seen, however it is written', () => {
  const ways = [
    "import { a } from '../words/a.ts';",
    "import type { A } from '../words/a.ts';",
    "import '../words/a.ts';",
    "import {\n  a,\n} from '../words/a.ts';",
    "export { a } from '../words/a.ts';",
    "export * from '../words/a.ts';",
    "const a = await import('../words/a.ts');",
    "new Worker(new URL('../words/a.ts', import.meta.url));",
    "import { a } from '#words/a.ts';",
  ];
  for (const way of ways) {
    const words = [file('src/words/a.ts', ''), file('src/words/en/a.ts', '')];
    const sources = [file('src/sewing/hem.ts', way), ...words];
    expect(brokenWalls(sources), way).toEqual([
      expect.stringContaining('src/sewing/hem.ts must not import from src/words: arithmetic'),
    ]);
  }
});

test('packages and missing endings are seen too', () => {
  const sources = [
    file('src/sewing/hem.ts', "import { h } from 'preact';", "import { a } from './a';"),
    file('src/sewing/a.ts', ''),
    file('src/app/start.ts', "import { render } from 'preact';", "import '../sewing/a.ts';"),
    file('src/app/look.ts', "import './here.css';", "import css from './gone.css?inline';"),
  ];
  expect(brokenWalls(sources, ['src/app/here.css'])).toEqual([
    expect.stringContaining('must not use the package preact'),
    expect.stringContaining('asks for ./a, which is not a file'),
    expect.stringContaining('asks for ./gone.css?inline, which is not a file'),
  ]);
});

test('words are asked for by the one way in, which knows the language', () => {
  const sources = [
    file('src/screens/a.tsx', "import '#words/phone/a.ts';", "import '../words/en/phone/a.ts';"),
    file('src/words/en/phone/a.ts', "import './b.ts';"),
    file('src/words/en/phone/b.ts', ''),
  ];
  expect(brokenWalls(sources)).toEqual([
    expect.stringContaining("a.tsx must ask for '#words/…' instead of ../words/en/phone/a.ts"),
  ]);
});

test('one list names every calculation; none knows another', () => {
  const sources = [
    file('src/calculations/list.ts', "import './hem/hem.ts';"),
    file('src/calculations/hem/hem.ts', "import '../seam/fields.ts';"),
    file('src/calculations/seam/fields.ts', "import '../../screens/home.ts';"),
    file('src/screens/home.ts', ''),
  ];
  expect(brokenWalls(sources)).toEqual([
    expect.stringContaining('hem.ts must not import from another calculation'),
    expect.stringContaining('fields.ts must not import from src/screens'),
  ]);
});

test('a screen may have files of its own, and not another screen', () => {
  const sources = [
    file('src/screens/hem/hem.ts', "import './fields.ts';", "import '../closures/fields.ts';"),
    file('src/screens/hem/fields.ts', ''),
    file('src/screens/closures/fields.ts', ''),
  ];
  expect(brokenWalls(sources)).toEqual([
    expect.stringContaining('hem.ts must not import from another screen, src/screens/closures/'),
  ]);
});

test('rooms of a folder import one way, and each has its place there', () => {
  for (const [zone, rooms] of Object.entries(ROOMS)) {
    const names = Object.keys(rooms);
    for (const [index, name] of names.entries()) {
      expect(names.slice(0, index), `${zone}/${name}`).toEqual(
        expect.arrayContaining([...(rooms[name]?.may ?? [])]),
      );
    }
    const there = new Set(sourcesIn(zone).map(({ path }) => roomOf(path, zone)));
    expect([...there].sort(), zone).toEqual([...names].sort());
  }
});

test('a room that imports backwards is seen, and a room that is in no table', () => {
  const sources = [
    file('src/tape/pitch/a.ts', "import '../claims/claim.ts';", "import '../frame/frame.ts';"),
    file('src/tape/frame/frame.ts', ''),
    file('src/tape/claims/claim.ts', "import '../protocol.ts';"),
    file('src/tape/protocol.ts', ''),
    file('src/tape/cellar/a.ts', "import '../frame/frame.ts';"),
    file('src/words/en/outputs/a.ts', "import '../phone/b.ts';"),
    file('src/words/en/phone/b.ts', ''),
  ];
  expect(brokenWalls(sources)).toEqual([
    expect.stringContaining('pitch/a.ts must not import from src/tape/claims: a pitch is measured'),
    expect.stringContaining('claim.ts must not import from src/tape/.: a claim is what'),
    expect.stringContaining('src/tape/cellar/a.ts is in no room of src/tape'),
    expect.stringContaining('a.ts must not import from src/words/en/phone: a garment asks'),
  ]);
});

test('a circle and a file that only hands on are seen', () => {
  const circle = [
    file('src/sewing/a.ts', "import { b } from './b.ts';"),
    file('src/sewing/b.ts', "import { c } from './c.ts';"),
    file('src/sewing/c.ts', "import type { A } from './a.ts';"),
  ];
  expect(importCircles(circle)).toEqual([
    'src/sewing/a.ts → src/sewing/b.ts → src/sewing/c.ts → src/sewing/a.ts',
  ]);
  expect(onlyHandsOn(file('x.ts', "export * from './a.ts';"))).toBe(true);
  expect(onlyHandsOn(file('x.ts', "import { a } from './a.ts';", 'export { a };'))).toBe(true);
  expect(onlyHandsOn(file('x.ts', "export * from './a.ts';", 'export const b = 1;'))).toBe(false);
  expect(onlyHandsOn(file('x.ts', "import './a.css';"))).toBe(false);
});
