import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  asideLine,
  backupParts,
  garmentLine,
  writeBackup,
} from '../../src/garment/backup/backup.ts';
import { previewOf } from '../../src/garment/backup/backup-preview.ts';
import { BackupReader, readBackup } from '../../src/garment/backup/read-backup.ts';
import { checksum } from '../../src/garment/checksum.ts';
import { newGarment } from '../../src/garment/record/new-garment.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Fact, Garment } from '../../src/garment/record/record.ts';
import { hooks, withWork } from '../storage/coats.ts';

const third: Fact = {
  ...{ home: 'k1||marks', shown: 1_232_000, plan: 1_232_000, tape: 8000, rule: 1, read: '' },
  ...{ when: 5, measured: 1_248_000, mark: { rank: 2, of: 7, asked: 1_232_000 } },
};
const coat = (): Garment => ({
  ...withWork(newGarment('g1', 'Coat', 1), 'k1', 2),
  facts: { f1: third },
});
const demo = (): Garment => ({
  ...withWork(newGarment('demo', 'Waistcoat (invented)', 4), 'w', 5),
  invented: true,
});
/** One of the second version, as it was written. */
const second = {
  ...{ version: 2, id: 'old', name: 'Old coat', invented: false, changed: 3, edits: 4 },
  takenOff: [],
  kept: [
    {
      ...{ id: 'k1', name: 'Hooks', stage: 'close', calculation: 'closures' },
      draft: { u: 'cm', opening: '46.3', count: '7' },
      runs: [{ planned: { '3': 1_232_000 }, made: { '3': '15.6 cm' } }],
    },
  ],
};

const WHOLE = { ok: true, rejected: [], setAside: [], damaged: new Set(), lacks: undefined };

/** A backup as the first versions of the app laid it out: without sums, so what is of this version is in doubt. */
const oldBackup = (garments: readonly unknown[]) =>
  JSON.stringify({ format: 'thumbrule backup', version: 1, garments }, null, 1);

/** A gzip file ends with the CRC-32 of what is in it, and its length (RFC 1952, 2.3.1). */
function gzipSum(text: string): string {
  const file = gzipSync(text);
  return file
    .readUInt32LE(file.length - 8)
    .toString(16)
    .padStart(8, '0');
}

test('the checksum is the one gzip files carry, of any text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
      expect(checksum(text)).toBe(gzipSum(text));
    }),
    { seed: 1952, numRuns: 300 },
  );
});

test('the checksum of characters of every length there is in UTF-8 (RFC 3629, section 3)', () => {
  for (const code of [0, 0x7f, 0x80, 0x7ff, 0x800, 0xffff, 0x10000, 0x10ffff]) {
    const text = `a${String.fromCodePoint(code)}b`;
    expect(checksum(text), code.toString(16)).toBe(gzipSum(text));
  }
});

const word = fc
  .string({ minLength: 1, maxLength: 30 })
  .filter((text) => text.trim() !== '' && text !== '__proto__');
/** What is in its maps is anyone's: all of it is written and read as it is. */
const map = fc.dictionary(word, fc.jsonValue({ maxDepth: 2 }), {
  noNullPrototype: true,
  maxKeys: 4,
});
const garments = fc.record({
  version: fc.constant(3 as const),
  id: word,
  name: word,
  invented: fc.boolean(),
  changed: fc.nat(),
  edits: fc.nat(),
  quantities: map,
  works: map,
  facts: map,
  begun: map,
  decisions: map,
});
const several = fc.uniqueArray(garments, { maxLength: 4, selector: ({ id }) => id });

test('a backup gives back every garment just as it was, however its text is cut into pieces', () => {
  fc.assert(
    fc.property(several, fc.integer({ min: 1, max: 5000 }), (all, piece) => {
      const text = writeBackup(all);
      const reader = new BackupReader();
      for (let at = 0; at < text.length; at += piece) reader.take(text.slice(at, at + piece));
      const read = reader.end();
      expect(read).toEqual({ ...WHOLE, garments: JSON.parse(JSON.stringify(all)) });
    }),
    { seed: 12 },
  );
});

test('a backup is read again as JSON laid out anew', () => {
  fc.assert(
    fc.property(several, (all) => {
      const same = { ...WHOLE, garments: JSON.parse(JSON.stringify(all)) };
      expect(readBackup(JSON.stringify(JSON.parse(writeBackup(all)), null, 2))).toEqual(same);
    }),
    { seed: 12 },
  );
});

test('one of the first versions is read in pieces as well', () => {
  const text = oldBackup([second, { ...second, id: 'demo' }]);
  for (const piece of [20, 100, 333]) {
    const reader = new BackupReader();
    for (let at = 0; at < text.length; at += piece) {
      expect(reader.take(text.slice(at, at + piece))).toBeUndefined();
    }
    expect(reader.end()).toMatchObject({ ...WHOLE, garments: [{ id: 'old' }, { id: 'demo' }] });
  }
});

test('each changed digit is found: the garment is given, and named as damaged', () => {
  const text = writeBackup([demo(), coat()]);
  const [head = '', first = '', own = ''] = text.split('\n');
  const begins = head.length + first.length + 2;
  let tried = 0;
  for (const { index } of own.matchAll(/\d/g)) {
    const at = begins + index;
    const other = String((Number(text[at]) + 1 + (tried % 9)) % 10);
    tried += 1;
    const read = readBackup(text.slice(0, at) + other + text.slice(at + 1));
    if (!read.ok) throw new Error(read.fault);
    const refused = read.rejected.map(({ place }) => place);
    const harmed = read.damaged.size === 1 && !read.damaged.has('demo');
    expect(harmed || refused[0] === 2, `${other} at ${index}`).toBe(true);
    expect(read.garments.some(({ id }) => id === 'demo')).toBe(true);
  }
  expect(tried).toBeGreaterThan(20);
});

test('a record that can’t be read is in the backup as it was, and in one that was made of that', () => {
  const harmed = { version: 1, name: 7, deep: [{ x: 1.5 }] };
  const later = { ...coat(), id: 'later', version: 4 };
  const aside = [
    asideLine('garment:bad', JSON.stringify(harmed)),
    asideLine('garment:later', JSON.stringify(later)),
  ];
  const read = readBackup(backupParts([garmentLine(coat())], aside).join(''));
  const setAside = [
    { key: 'garment:bad', raw: harmed },
    { key: 'garment:later', raw: later },
  ];
  expect(read).toEqual({ ...WHOLE, garments: [coat()], setAside });
});

test('a record that can’t be read is in a backup laid out anew, too', () => {
  const aside = [asideLine('garment:bad', '{"name":7}')];
  const text = backupParts([garmentLine(coat())], aside).join('');
  const setAside = [{ key: 'garment:bad', raw: { name: 7 } }];
  expect(readBackup(JSON.stringify(JSON.parse(text)))).toEqual({
    ...{ ...WHOLE, garments: [coat()], setAside },
  });
});

test('only a record under a name of ours, and where such are set aside, is taken as one', () => {
  const rejectedOf = (read: ReturnType<typeof readBackup>) => read.ok && read.rejected.length;
  const asides = (...lines: string[]) => readBackup(backupParts([], lines).join(''));
  for (const key of ['garment:x', 'deleted:x', `garment:${'x'.repeat(200)}`, 'garment:a\nb']) {
    expect(asides(asideLine(key, '{}'))).toMatchObject({ setAside: [{ key }], rejected: [] });
  }
  for (const key of ['other:x', 'a garment:x', 'garment:', `garment:${'x'.repeat(201)}`]) {
    expect(rejectedOf(asides(asideLine(key, '{}'))), key).toBe(1);
  }
  expect(rejectedOf(asides('{"key":5,"raw":{}}'))).toBe(1);
  expect(rejectedOf(asides('{"key":["garment:x"],"raw":{}}'))).toBe(1);
  const among = asideLine('garment:x', '{}');
  expect(rejectedOf(readBackup(backupParts([among], []).join('')))).toBe(1);
  expect(rejectedOf(readBackup(oldBackup([JSON.parse(among)])))).toBe(1);
});

test('what is rejected is shown as it begins, under as much of its name as a name may have', () => {
  const long = { name: 'n'.repeat(200), note: 'x'.repeat(5000) };
  const [first] = foundIn(oldBackup([long]));
  expect(first?.name).toBe('n'.repeat(80));
  expect(first?.text).toBe(JSON.stringify(long).slice(0, 2000));
  const torn = garmentLine(coat()).slice(0, -5);
  const [second] = foundIn(backupParts([torn], []).join(''));
  expect(second).toMatchObject({ place: 1, name: undefined, text: torn });
  const [third] = foundIn(backupParts(['{"id": 5}'], []).join(''));
  expect(third?.text).toBe('{"id": 5}');
});

function foundIn(text: string) {
  const read = readBackup(text);
  if (!read.ok) throw new Error(read.fault);
  return read.rejected;
}

test('what could not be read where the file was written is a garment where it can be', () => {
  const aside = [asideLine('garment:g1', JSON.stringify(coat()))];
  expect(readBackup(backupParts([], aside).join(''))).toEqual({ ...WHOLE, garments: [coat()] });
});

test('a file that is no backup of ours is refused whole', () => {
  expect(readBackup('')).toEqual({ ok: false, fault: 'not-json' });
  expect(readBackup('x'.repeat(5000))).toEqual({ ok: false, fault: 'not-json' });
  expect(readBackup('[]')).toEqual({ ok: false, fault: 'foreign' });
  expect(readBackup('null')).toEqual({ ok: false, fault: 'foreign' });
  const of = (version: unknown) =>
    JSON.stringify({ format: 'thumbrule backup', version, garments: [] });
  expect(readBackup(of(2))).toEqual({ ok: false, fault: 'newer' });
  expect(readBackup(of('1'))).toEqual({ ok: false, fault: 'damaged' });
  expect(readBackup(of('2'))).toEqual({ ok: false, fault: 'damaged' });
  expect(readBackup(of(0))).toEqual({ ok: false, fault: 'damaged' });
  const without = JSON.stringify({ format: 'thumbrule backup', version: 1 });
  expect(readBackup(without)).toEqual({ ok: false, fault: 'damaged' });
  const later = writeBackup([coat()]).replace('"version":1', '"version":2');
  expect(readBackup(later)).toEqual({ ok: false, fault: 'newer' });
});

test('after a thousand characters a file that doesn’t begin as an object need not be read on', () => {
  const faultOf = (...pieces: string[]) => {
    const reader = new BackupReader();
    return pieces.map((piece) => reader.take(piece)).at(-1);
  };
  expect(faultOf('x'.repeat(1000))).toBeUndefined();
  expect(faultOf('x'.repeat(1000), 'x')).toBe('not-json');
  expect(faultOf(`x{${'x'.repeat(1000)}`)).toBe('not-json');
  expect(faultOf(`x {${'x'.repeat(1000)}`)).toBe('not-json');
  expect(faultOf(`  {${' '.repeat(1000)}`)).toBeUndefined();
});

test('a number of garments that is none is passed over', () => {
  const file = { format: 'thumbrule backup', version: 1, count: 'many', garments: [second] };
  expect(readBackup(JSON.stringify(file))).toMatchObject({ ...WHOLE, garments: [{ id: 'old' }] });
});

/** Not for each mutant: it takes its time. */
const large = test.skipIf(process.env.MUTANTS);

large('only a piece that no engine takes as one is too large', () => {
  const reader = new BackupReader();
  expect(reader.take('{')).toBeUndefined();
  const much = ' '.repeat(1_000_000);
  const faults = new Set(Array.from({ length: 200 }, () => reader.take(much)));
  expect(faults).toEqual(new Set([undefined, 'too-large']));
});

large('a backup of more than 20 MB, of as many works as garments hold, is read again', () => {
  const works = Object.fromEntries(Array.from({ length: 500 }, (_, i) => [`k${i}`, hooks()]));
  const full = (id: string): Garment => ({ ...newGarment(id, `Coat ${id}`, 1), works });
  const all = Array.from({ length: 360 }, (_, i) => full(`g${i}`));
  const text = writeBackup(all);
  expect(text.length).toBeGreaterThan(20_000_000);
  const read = readBackup(text);
  expect(read.ok && read.garments.length).toBe(all.length);
  expect(read.ok && read.damaged.size + read.rejected.length).toBe(0);
  expect(read.ok && read.garments.at(-1)).toEqual(all.at(-1));
});

test('a damaged garment is left out and listed, the others are read', () => {
  const all = [coat(), { ...coat(), id: 'g2', works: 'no' }, coat()];
  expect(readBackup(oldBackup(all))).toMatchObject({
    ok: true,
    garments: [{ id: 'g1' }],
    rejected: [
      { place: 2, name: 'Coat', damage: { part: 'works' } },
      { place: 3, damage: { part: 'id' } },
    ],
  });
});

test('a file that is cut off gives the garments before the cut, and says what it lacks', () => {
  const text = writeBackup([coat(), demo(), newGarment('g3', 'Hat', 6)]);
  const cut = text.slice(0, text.indexOf('"g3"'));
  expect(readBackup(cut)).toMatchObject({
    ok: true,
    garments: [{ id: 'g1' }, { id: 'demo' }],
    lacks: 3,
  });
  const without = text.split('\n').toSpliced(2, 1).join('\n');
  expect(readBackup(without)).toMatchObject({ garments: [{ id: 'g1' }, { id: 'g3' }], lacks: 3 });
  expect(readBackup(text.slice(0, 200))).toEqual({ ok: false, fault: 'not-json' });
});

test('a file that ends with a line, but not with its line’s end, gives that line', () => {
  const text = writeBackup([coat(), demo()]);
  expect(readBackup(text.trimEnd())).toMatchObject({ ...WHOLE, garments: [{}, {}] });
  const [head = '', first = '', second = ''] = text.split('\n');
  // With and without the comma after it: its end is missing, though all it was written with is there.
  expect(readBackup([head, first].join('\n'))).toMatchObject({ garments: [coat()], lacks: 2 });
  expect(readBackup([head, first, second].join('\n'))).toMatchObject({
    garments: [coat(), { id: 'demo' }],
    lacks: 2,
  });
  expect(readBackup([head, first, second, ''].join('\n'))).toMatchObject({ lacks: 2 });
});

test('one of this version without its sum is in doubt, and so is an older one that has another', () => {
  const damagedIn = (...all: unknown[]) => {
    const read = readBackup(oldBackup(all));
    if (!read.ok) throw new Error(read.fault);
    expect(read.garments).toHaveLength(all.length);
    return [...read.damaged];
  };
  expect(damagedIn(coat(), second)).toEqual(['g1']);
  const sum = checksum(JSON.stringify(second));
  expect(damagedIn({ ...second, sum })).toEqual([]);
  expect(damagedIn({ ...second, sum: checksum('another') })).toEqual(['old']);
});

test('a long line that begins wrong harms no other, wherever the file is cut into pieces', () => {
  const long = garmentLine({ ...coat(), name: 'n'.repeat(80), works: { k: 'x'.repeat(1500) } });
  const text = backupParts([garmentLine(demo()), long.slice(1), garmentLine(coat())], []).join('');
  for (const piece of [text.length, 1100, 40]) {
    const reader = new BackupReader();
    for (let at = 0; at < text.length; at += piece) {
      expect(reader.take(text.slice(at, at + piece))).toBeUndefined();
    }
    expect(reader.end()).toMatchObject({
      garments: [{ id: 'demo' }, { id: 'g1' }],
      rejected: [{ place: 2 }],
    });
  }
});

test('an empty line in a backup is passed over', () => {
  const lines = writeBackup([coat()]).split('\n');
  expect(readBackup(lines.toSpliced(1, 0, '', '  ').join('\n'))).toEqual({
    ...{ ...WHOLE, garments: [coat()] },
  });
});

test('2,500 damaged backups: never a failure, never more than was written, never unsaid', () => {
  const all = [coat(), demo(), newGarment('g3', '<script>alert(1)</script>', 6)];
  const before = new Map(all.map((garment) => [garment.id, garment]));
  const text = writeBackup(all);
  const damage = fc.oneof(
    fc.record({ cut: fc.nat(text.length) }),
    fc.record({ at: fc.nat(text.length - 1), bit: fc.nat(7) }),
    fc.record({ at: fc.nat(text.length - 1), put: fc.constantFrom('\n', '"', '{', ']}', '') }),
    fc.record({
      from: fc.constantFrom(
        '"version":1',
        '"version":3',
        '"changed":5',
        '"works":{',
        '"7"',
        '"closures"',
        '46.3',
        '"invented":true',
        '"count":3',
        '"sum"',
      ),
      to: fc.constantFrom(
        '1e999',
        '"__proto__"',
        'null',
        '{"toString":1}',
        '[',
        '""',
        `"${'x'.repeat(5000)}"`,
      ),
    }),
  );
  fc.assert(
    fc.property(damage, (how) => {
      const read = readBackup(harmed(text, how));
      if (!read.ok) return;
      expect(read.garments.length + read.rejected.length).toBeLessThanOrEqual(all.length + 2);
      for (const garment of read.garments) {
        expect(readRecord(garment).ok).toBe(true);
        // Whatever is not as it was written is named.
        if (!read.damaged.has(garment.id)) {
          expect(garment).toEqual(before.get(garment.id));
        }
      }
      const said = read.rejected.length > 0 || read.lacks !== undefined;
      expect(said || read.garments.length === all.length).toBe(true);
    }),
    { seed: 1912, numRuns: 2500 },
  );
});

type Harm =
  | { cut: number }
  | { at: number; bit: number }
  | { at: number; put: string }
  | { from: string; to: string };

function harmed(text: string, how: Harm): string {
  if ('cut' in how) return text.slice(0, how.cut);
  if ('from' in how) return text.replace(how.from, how.to);
  const put =
    'put' in how ? how.put : String.fromCharCode(text.charCodeAt(how.at) ^ (1 << how.bit));
  return text.slice(0, how.at) + put + text.slice(how.at + 1);
}

test('a preview says what a restore would do, work by work, and changes nothing', () => {
  const here = coat();
  const changed = { ...coat(), works: { k1: { ...hooks(), fields: {} } } };
  const later = withWork(changed, 'k2', 9, hooks({ name: 'Lapel' }));
  expect(previewOf(here, { ...coat(), changed: 7, edits: 9 }, false)).toMatchObject({
    ...{ state: 'same', damaged: false, unmade: 0 },
  });
  expect(previewOf(here, later, true)).toMatchObject({
    state: 'differs',
    damaged: true,
    later: true,
    added: ['Lapel'],
    changed: ['Hooks'],
    lost: [],
    unmade: 0,
  });
  expect(previewOf(later, coat(), false)).toMatchObject({
    state: 'differs',
    later: false,
    lost: ['Lapel'],
  });
  expect(previewOf(undefined, coat(), false)).toEqual({
    ...{ garment: coat(), damaged: false, state: 'new', later: true },
    ...{ added: ['Hooks'], changed: [], lost: [], unmade: 0 },
  });
  expect(previewOf(here, { ...coat(), changed: 1 }, false)).toEqual({
    ...{ garment: { ...coat(), changed: 1 }, damaged: false, state: 'same', later: false },
    ...{ added: [], changed: [], lost: [], unmade: 0 },
  });
  // A name in a file may be anything; what has none is still told.
  const odd = { ...coat(), works: { ...coat().works, k2: { name: 7 }, k3: null } };
  expect(previewOf(here, odd, false).added).toEqual(['', '']);
  expect(previewOf(here, { ...coat(), name: 'Cloak' }, false)).toMatchObject({
    state: 'differs',
    // Changed at the very same time, it is not the earlier one.
    ...{ later: true, added: [], changed: [], lost: [] },
  });
  expect(here).toEqual(coat());
});

test('a preview counts what is made here and isn’t in the file, or is otherwise', () => {
  const here = { ...coat(), facts: { f1: third, f2: third, f3: { ...third, measured: 1 } } };
  const theirs = { ...coat(), facts: { f1: third, f3: third, f9: third } };
  expect(previewOf(here, theirs, false)).toMatchObject({ state: 'differs', unmade: 2 });
});

test('a backup of version 2 is read as version 3', () => {
  const read = readBackup(oldBackup([second]));
  expect(read).toMatchObject({
    ...WHOLE,
    garments: [{ version: 3, id: 'old', works: { k1: { name: 'Hooks', older: 2 } } }],
  });
  expect(read.ok && Object.values(read.garments[0]?.facts ?? {})).toMatchObject([
    { shown: 1_232_000, measured: 1_248_000 },
  ]);
});
