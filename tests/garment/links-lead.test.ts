import { describe, expect, test } from 'vitest';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Quantity, Work } from '../../src/garment/record/record.ts';
import { type NoSource, type Source, sourceOf } from '../../src/garment/work-out/links.ts';
import { type Known, seenWork } from '../../src/garment/work-out/seen-work.ts';
import { mm } from '../../src/lengths/length.ts';
import { output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const SIDES = { sides: ['left', 'right'] };
const work = (calculation: string, more: object = {}): Work =>
  ({ ...{ name: 'Work', calculation, rank: 1, fields: {} }, ...more }) as Work;

/** Invented: works of one and of two sides, one taken off, and some that aren’t to be had here. */
const WORKS: Readonly<Record<string, Work>> = {
  strip: work('toy-strip'),
  strips: work('toy-strip', SIDES),
  hems: work('toy-hem', { ...SIDES, own: { right: { turned: typed('twice') } } }),
  off: work('toy-strip', { off: true }),
  newer: work('lattice'),
  odd: work('toy-strip', { fields: { lattice: typed('1') } }),
  awaited: work('slow'),
  missing: work('lost'),
};
const here: Known = new Map([...KNOWN, ['slow', 'awaited'], ['lost', 'missing']]);
const long = { name: 'Long', kind: 'length', rank: 1, parts: [] } as Quantity;
const places = {
  quantities: new Map([
    ['long', long],
    ['seven', { ...long, kind: 'count' } as Quantity],
  ]),
  works: new Map(
    Object.entries(WORKS).map(([id, one]) => [id, seenWork(one, here, new WeakMap())] as const),
  ),
};
const leads = (part: Parameters<typeof sourceOf>[0], side = '') => sourceOf(part, side, places);
const cut = (id: string, side: string) => homeOf(id, side, 'cut');

describe('a link leads', () => {
  test.each<[string, ReturnType<typeof output>, string, Partial<Source>]>([
    ['to a number of the garment', quantity('long'), '', { kind: 'length', keys: ['long||'] }],
    ['from either side', quantity('seven'), 'left', { kind: 'count', keys: ['seven||'] }],
    ['to the one of a work', output('strip', 'cut'), '', { keys: [cut('strip', '')] }],
    ['from a side, too', output('strip', 'cut'), 'left', { keys: [cut('strip', '')] }],
    ['to what it names', output('strip', 'holes'), '', { kind: 'run', keys: ['strip||holes'] }],
    ['to the same side', output('strips', 'cut'), 'right', { keys: [cut('strips', 'right')] }],
    [
      'to a side by name',
      output('strips', 'cut', 'left'),
      'right',
      { keys: [cut('strips', 'left')] },
    ],
    [
      'to all where none is the same',
      ...([
        output('strips', 'cut'),
        '',
        { keys: [cut('strips', 'left'), cut('strips', 'right')] },
      ] as const),
    ],
    [
      'to what a side has that the other has not',
      ...([output('hems', 'first-turn'), 'right', { keys: ['hems|right|first-turn'] }] as const),
    ],
  ])('%s', (_, part, side, source) => {
    expect(leads(part, side)).toEqual({ kind: 'length', total: false, ...source });
  });

  test('to the total of all sides, from whichever, of what adds up', () => {
    const keys = [cut('strips', 'left'), cut('strips', 'right')];
    const total = { kind: 'length', keys, total: true };
    for (const side of ['', 'left']) {
      expect(leads(output('strips', 'cut', 'total'), side)).toEqual(total);
    }
    expect(leads(output('strips', 'last', 'total'))).toStrictEqual({ gone: undefined });
  });

  const not: readonly [string, ReturnType<typeof output>, string, NoSource][] = [
    ['a number that is gone', quantity('none'), '', { gone: { why: 'gone' }, for: 'none||' }],
    [
      'a work that is gone',
      output('none', 'cut'),
      '',
      { gone: { why: 'gone' }, for: cut('none', '') },
    ],
    [
      'one taken off',
      output('off', 'cut'),
      '',
      { gone: { why: 'taken off' }, for: cut('off', '') },
    ],
    [
      'a kind of work not known here',
      output('newer', 'x'),
      '',
      { gone: { why: 'newer' }, for: 'newer||x' },
    ],
    [
      'a number not known here',
      output('strip', 'x'),
      '',
      { gone: { why: 'newer' }, for: 'strip||x' },
    ],
    [
      'a work with a field not known here',
      output('odd', 'cut'),
      '',
      { gone: { why: 'newer' }, for: cut('odd', '') },
    ],
    ['one on its way', output('awaited', 'x'), '', { gone: { why: 'awaited' }, for: 'awaited||x' }],
    [
      'one not to be had',
      output('missing', 'x'),
      '',
      { gone: { why: 'missing' }, for: 'missing||x' },
    ],
    [
      'a side that isn’t there',
      output('strips', 'cut', 'back'),
      'left',
      { gone: { why: 'no such side' }, for: cut('strips', '') },
    ],
    [
      'what an option takes away on one side',
      output('hems', 'first-turn'),
      '',
      { gone: { why: 'absent', by: 'turned' }, for: 'hems||first-turn' },
    ],
  ];
  test.each(not)('nowhere for %s, and says why', (_, part, side, why) => {
    expect(leads(part, side)).toEqual(why);
  });

  test('nowhere where a number was put in its place: that stands there, as sure as it was', () => {
    const put = { put: mm(47), kind: 'length', was: { quantity: 'long' } } as const;
    const bare = { kind: 'length', keys: [], total: false };
    expect(leads(put)).toEqual({ ...bare, put: { value: mm(47), plusMinus: 0, reading: '' } });
    expect(sourceOf({ ...put, plusMinus: 80 }, 'left', places, 'p:a')).toEqual({
      ...bare,
      put: { value: mm(47), plusMinus: 80, reading: 'p:a' },
    });
  });
});
