import { expect, test } from 'vitest';
import {
  all,
  choice,
  count,
  given,
  length,
  lengthOrNone,
  lengths,
  maybeLength,
  not,
  number,
} from '../../src/calculation/field-spec.ts';
import { schema } from '../../src/calculation/schema.ts';
import { inches, mm, ZERO } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';

const bench = benchOf();
const level = maybeLength('none');
const by = choice({ count: 'Number', exact: 'Exact pitch' });
const { asked, read } = schema(
  {
    opening: 'Opening',
    by: 'By',
    count: 'Number',
    pitch: 'Pitch',
    level: 'Level',
    keep: 'Keep',
    sewn: 'Sewn',
    thick: 'Thick',
    angle: 'Angle',
  },
  {
    opening: length({ start: { cm: '46.3', mm: '463', in: '18 1/4' }, usual: 'opening' }),
    by,
    count: count({ start: '7', when: by.is('count') }),
    pitch: length({ start: '5 cm', when: by.is('exact') }),
    level,
    keep: choice({ ends: 'Ends', gap: 'Gap' }, { when: all(given(level), not(by.is('exact'))) }),
    sewn: lengths('none'),
    thick: lengthOrNone('nothing'),
    angle: number({ start: '90' }),
  },
);
const start = asked.start(bench);
const given7 = (draft: Record<string, string>) => read({ ...start, ...draft }, bench);
const faultsOf = (draft: Record<string, string>) => {
  const outcome = given7(draft);
  return outcome.ok ? [] : outcome.faults;
};
const shown = (draft: Record<string, string>) =>
  asked.fields({ ...start, ...draft }).map(({ key }) => key);

test('fields start with round numbers of the bench’s unit, choices with their first', () => {
  expect(start).toMatchObject({
    opening: '46.3',
    by: 'count',
    count: '7',
    level: '',
    keep: 'ends',
  });
  expect(asked.start(benchOf({ unit: 'in' })).opening).toBe('18 1/4');
  expect(asked.start(benchOf({ unit: 'mm' })).opening).toBe('463');
});

test('a field is shown, and read, only when it is asked for', () => {
  expect(shown({})).toEqual(['opening', 'by', 'count', 'level', 'sewn', 'thick', 'angle']);
  expect(shown({ by: 'exact', level: '3' })).toEqual([
    'opening',
    'by',
    'pitch',
    'level',
    'sewn',
    'thick',
    'angle',
  ]);
  expect(shown({ level: '3' })).toContain('keep');
  expect(given7({ pitch: 'nonsense' })).toMatchObject({ ok: true, value: { pitch: undefined } });
  // What was chosen where it isn’t asked for any more counts for nothing.
  expect(given7({ keep: 'gap' })).toMatchObject({ value: { keep: 'ends' } });
});

test('lengths are read in the bench’s unit, unless another is written; counts and numbers as they are', () => {
  const typed = { opening: '1.2', level: '1 in', sewn: '1.2; 3 in', count: '9', angle: '22.5' };
  expect(given7(typed)).toMatchObject({
    value: {
      opening: mm(12),
      level: inches(1),
      sewn: [mm(12), inches(3)],
      thick: ZERO,
      count: 9,
      angle: 22.5,
    },
  });
  expect(given7({ level: '  ' })).toMatchObject({ value: { level: undefined, sewn: [] } });
});

test('everything that can’t be read is a fault of its own field', () => {
  expect(
    faultsOf({ opening: '1.2.3', count: '2.5', sewn: '1; 3/', thick: 'x', angle: '' }),
  ).toMatchObject([
    { field: 'opening', why: { of: 'reading', fault: { kind: 'two-decimal-marks' } } },
    { field: 'count', why: { fault: { kind: 'not-whole' } } },
    { field: 'sewn' },
    { field: 'thick' },
    { field: 'angle', why: { fault: { kind: 'empty' } } },
  ]);
});

test('an option that is unknown is a problem in words, never the first instead', () => {
  for (const odd of ['odd', 'constructor', '__proto__', 'toString']) {
    const [fault] = faultsOf({ by: odd });
    expect(fault).toMatchObject({ field: 'by', why: { of: 'words' } });
    expect(JSON.stringify(fault)).toContain(`By: “${odd}” is no choice`);
    expect(JSON.stringify(fault)).toContain('Number; Exact pitch');
  }
  expect(given7({ by: '' })).toMatchObject({ ok: true, value: { by: 'count' } });
});

test('a field that is unknown is a problem in words; the field of a tape in an older address is none', () => {
  expect(faultsOf({ openning: '3' })).toMatchObject([{ field: 'openning', why: { of: 'words' } }]);
  expect(faultsOf({ openning: '' })).toEqual([]);
  expect(faultsOf({ into: 'opening' })).toEqual([]);
  // What a page keeps is parted from the fields before: nothing here knows of it.
  expect(faultsOf({ u: 'cm', 'made-2': '1=3' }).map(({ field }) => field)).toEqual(['u', 'made-2']);
});

test('a choice whose options change takes the first for one that isn’t offered just now', () => {
  const corners = maybeLength('none');
  const fit = choice(
    (ask) => (ask(corners) === '' ? { ends: 'Ends', far: 'Far end' } : { ends: 'Ends' }),
    {
      known: (value) => value === 'far',
    },
  );
  const strip = schema({ fit: 'Fit', corners: 'Corners' }, { fit, corners });
  expect(strip.read({ fit: 'far' }, bench)).toMatchObject({ value: { fit: 'far' } });
  expect(strip.read({ fit: 'far', corners: '3' }, bench)).toMatchObject({ value: { fit: 'ends' } });
  expect(strip.read({ fit: 'near', corners: '3' }, bench)).toMatchObject({ ok: false });
});

test('no field is called as what a page keeps', () => {
  // @ts-expect-error: an address holds the marks that are made by that name
  expect(schema({ made: 'Made' }, { made: maybeLength('none') }).specs).toHaveProperty('made');
  // @ts-expect-error: and by that one, of the second run
  expect(schema({ 'at-2': 'At' }, { 'at-2': maybeLength('none') }).specs).toHaveProperty('at-2');
});

test('what an earlier build asked for is passed over', () => {
  const now = schema({ level: 'Level' }, { level }, ['height']);
  expect(now.read({ level: '3', height: 'x' }, bench)).toEqual({
    ok: true,
    value: { level: mm(30) },
  });
});
