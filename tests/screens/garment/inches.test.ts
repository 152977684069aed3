import { describe, expect, test } from 'vitest';
import { demoWords } from '#words/garment/demo-words.ts';
import type { Kind } from '../../../src/calculation/output.ts';
import { DRAWINGS } from '../../../src/calculations/list.ts';
import { act } from '../../../src/garment/actions/act.ts';
import { demoGarment } from '../../../src/garment/actions/demo.ts';
import { SHIRT } from '../../../src/garment/actions/demo-shirt.ts';
import { SKIRT } from '../../../src/garment/actions/demo-skirt.ts';
import { WAISTCOAT } from '../../../src/garment/actions/demo-waistcoat.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { previewOf } from '../../../src/garment/actions/typing.ts';
import { plusMinus } from '../../../src/garment/work-out/doubt.ts';
import { inches, mm, UNITS_PER_INCH } from '../../../src/lengths/length.ts';
import { readLength } from '../../../src/lengths/read-length.ts';
import { quantityNumber } from '../../../src/screens/garment/measures/quantity-words.ts';
import { changedNumbers } from '../../../src/screens/garment/said/changed-numbers.ts';
import { numberAt } from '../../../src/screens/garment/said/say.ts';
import { drawnText, foundText, sureText } from '../../../src/screens/garment/said/value-text.ts';
import { sheetText } from '../../../src/screens/garment/sheet/sheet-as-text.ts';
import { sheetSaid } from '../../../src/screens/garment/sheet/sheet-said.ts';
import { givenNumber } from '../../../src/screens/garment/sheet/sheet-steps.ts';
import { takenText } from '../../../src/screens/garment/works/taken-text.ts';
import { numberText } from '../../../src/screens/garment/works/work-numbers.ts';
import { benchOf } from '../../controls/helpers.ts';
import { garmentOf, quantity, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';

// A tape of inches has halves down to sixteenths, and a ruler sixty-fourths; none has decimals. No outside source.
const bench = benchOf({ unit: 'in' });
const GRADUATION = UNITS_PER_INCH / 16;

const garments: [string, State][] = [
  ['waistcoat', begin(demoGarment(WAISTCOAT, demoWords.waistcoat, 'demo', 7, KNOWN), KNOWN)],
  ['skirt', begin(demoGarment(SKIRT, demoWords.skirt, 'demo', 7, KNOWN), KNOWN)],
  ['shirt', begin(demoGarment(SHIRT, demoWords.shirt, 'demo', 7, KNOWN), KNOWN)],
];

/** Every length of a garment, by where it is. */
function lengthsOf({ answer }: State) {
  return [...answer.nodes.values()].flatMap((node) => {
    const result = answer.values.get(node.key);
    const { key, kind = 'length', output } = node;
    if (kind !== 'length' || !result?.ok || typeof result.value !== 'number') return [];
    return [{ key, kind: kind as Kind, output, value: result.value, off: plusMinus(result) }];
  });
}

/** What is said, read back, is the number within a graduation; what is under one is said to be. */
function isAt(said: string, value: number): boolean {
  if (said.startsWith('under ')) return Math.abs(value) < GRADUATION;
  const read = readLength(said.replace('−', '-'), 'in');
  return read.ok && Math.abs(read.value - value) <= GRADUATION;
}

describe.each(garments)('on a bench of inches the %s has', (_, state) => {
  const all = lengthsOf(state);

  test('no number at home, in a field or on an open work in decimals, and each is on its tape', () => {
    expect(all.length).toBeGreaterThan(20);
    for (const { key, kind, output, value } of all) {
      const said = [
        numberAt(state.answer, key, value, bench),
        takenText({ kind, value }, bench),
        ...(output ? [numberText(output, value, bench)] : []),
      ];
      expect(said.filter((one) => /\d\.\d/.test(one) || !isAt(one, value))).toEqual([]);
    }
  });

  test('no number that another changes in decimals', () => {
    const changed = [...state.answer.sound.quantities.keys()].flatMap((id) => {
      const parts = [{ text: '401', unit: 'mm' as const, mark: '.' as const }];
      const typed = act(state, { do: 'type', place: { quantity: id }, parts, now: 1 }).state;
      return changedNumbers(state.answer, previewOf(typed), '', bench);
    });
    expect(changed.length).toBeGreaterThan(5);
    expect(changed.filter(({ before, after }) => /\d\.\d+ in/.test(before + after))).toEqual([]);
  });

  test('no number that a work comes to in decimals on its sheet', async () => {
    const drawings = new Map();
    for (const [id, load] of Object.entries(DRAWINGS)) drawings.set(id, await load());
    const wish = { state, bench, day: '1 May', bodies: true, drawings };
    const text = sheetText(sheetSaid(wish));
    expect(text.split('\n').filter((line) => /\d\.\d+ in\b/.test(line))).toEqual([]);
  });
});

// 78.9 cm and 34.5 cm are 31.063 and 13.583 in: on a tape of sixteenths no less than 31 1/8 and 13 5/8. By hand.
test('a piece is said to be no narrower, and no shorter, than it is cut', () => {
  const [, , [, shirt] = []] = garments;
  if (!shirt) throw new Error('no shirt');
  const said = sheetText(
    sheetSaid({ state: shirt, bench, day: '', bodies: true, drawings: new Map() }),
  );
  const fronts = said.slice(said.indexOf('\nFronts\n'));
  expect(fronts).toMatch(/Widest, as cut and opened: 13 5\/8 in\n\s*Longest, as cut: 31 1\/8 in/);
});

// 46.3 cm are 18.228 in, 18 1/4 less a third of a sixteenth. By hand.
test('a measure is said as it was typed in inches, typed in centimetres as the tape shows it', () => {
  const said = (text: string, unit: 'cm' | 'in', value: number) =>
    quantityNumber(
      { kind: 'length', parts: [{ text, unit, mark: '.' }] },
      { ok: true, value, state: 'planned', ends: {} },
      bench,
    );
  expect(said('46.3', 'cm', mm(463))).toBe('18 1/4 in');
  expect(said('18.2', 'in', inches(18.2))).toBe('18.2 in');
});

test('on the sheet, too: as typed, and what is found on the tape', () => {
  const front = typed('18.2', 'in');
  const quantities = {
    front: { name: 'Front edge', kind: 'length' as const, rank: 1, parts: front },
    half: {
      ...{ name: 'Half of it', kind: 'length' as const, rank: 2 },
      parts: [quantity('front'), ...typed(' ÷ 2', 'in')],
    },
    arm: { name: 'Armhole', kind: 'length' as const, rank: 3, parts: typed('46.3', 'cm') },
  };
  const state = begin(garmentOf({ quantities }), KNOWN);
  const sheet = sheetSaid({ state, bench, day: '', bodies: true, drawings: new Map() });
  expect(sheet.blocks).toContainEqual({
    kind: 'pairs',
    pairs: [
      ['Front edge', '18.2 in'],
      ['Half of it', '9 1/8 in'],
      ['Armhole', '18 1/4 in'],
    ],
  });
});

// Three sixteenths and a third of one: what may be no more is 3 of them, what may be no less is 4. By hand.
test('what no hand makes and may be no more, or no less, is rounded to that side', () => {
  const value = (inches(3 / 16) * 10) / 9;
  expect(foundText('length', value, bench, { bound: 'most' })).toBe('3/16 in');
  expect(foundText('length', value, bench, { bound: 'least' })).toBe('1/4 in');
  expect(takenText({ kind: 'length', value, bound: 'least' }, bench)).toBe('1/4 in');
  const bounds = [...KNOWN].flatMap(([id, known]) =>
    typeof known === 'object'
      ? known.outputs.flatMap(({ key, bound }) => (bound ? [`${id} ${key} ${bound}`] : []))
      : [],
  );
  expect(bounds).toContain('hem deepest most');
  expect(bounds).toContain('lacing piece-2 least');
  expect(bounds).toContain('vent vent least');
});

// 3.17 and 3.84 sixteenths: the nearest are 3 and 4, no less is 4, no more is 3. By hand.
test('on a drawing and on the sheet it is rounded to that side, too', () => {
  const value = inches(0.198);
  const least = { is: 'sure', value, off: 0 } as const;
  expect(
    givenNumber(
      'length',
      least,
      { answer: garments[0]?.[1].answer as never, bench },
      { bound: 'least' },
    ),
  ).toBe('1/4 in');
  expect(drawnText('0.198 in', bench, { bound: 'least' })).toBe('1/4 in');
  expect(drawnText('0.24 in', bench, { bound: 'most' })).toBe('3/16 in');
  expect(drawnText('7', bench)).toBe('7');
});

test('what a ruler of sixty-fourths has is said as it is, and how sure a number is, never as surer', () => {
  expect(foundText('length', inches(3 / 64), bench)).toBe('3/64 in');
  // 1/32 in is 0.79 mm.
  expect(sureText('length', inches(12.03), inches(0.0197), bench)).toEqual(['12', '1/16 in']);
  expect(sureText('length', inches(12), inches(1 / 32), bench)).toEqual(['12', '1/32 in']);
  expect(foundText('length', -inches(0.118), bench)).toBe('−1/8 in');
});
