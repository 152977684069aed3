import { describe, expect, test } from 'vitest';
import { demoWords } from '#words/garment/demo-words.ts';
import { demoGarment } from '../../../src/garment/actions/demo.ts';
import { WAISTCOAT } from '../../../src/garment/actions/demo-waistcoat.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { withKeys } from '../../../src/garment/actions/with-keys.ts';
import { needsOf } from '../../../src/garment/materials/need.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import type { Fields } from '../../../src/garment/record/record.ts';
import { mm } from '../../../src/lengths/length.ts';
import { output, quantity } from '../trial/garments.ts';
import { KNOWN } from '../trial/known.ts';
import { doing, garment, work } from './garments.ts';

const now = 5;
const cm = (amount: number) => mm(10 * amount);
const front = work('piece', 'width=40&length=60&top=1.5&bottom=4&side=1.5&count=2');
const hooks = work('closures', 'opening=46.3&count=7&top=1.2&bottom=2.5');
const needs = ({ answer }: State) => needsOf(answer);
const need = (state: State, work: string) => {
  const found = needs(state).find((one) => one.work === work);
  if (!found) throw new Error(`nothing is taken of ${work}`);
  return found;
};
const make = (of: string, key: string) =>
  ({ do: 'make', home: homeOf(of, '', key), id: `${of}${key}`, tape: 8000, now }) as const;
/** A piece with some of its fields taken from elsewhere. */
const taking = (fields: Fields) => ({ ...front, fields: { ...front.fields, ...fields } });

describe('what works take', () => {
  test('comes in the order of the work, each side by itself, and of nothing else', () => {
    const state = garment({
      hooks,
      sleeve: { ...front, sides: ['left', 'right'] },
      seam: work('seam'),
      cut: work('piece', 'given=cut&width=40&length=60'),
      off: { ...front, off: true },
      newer: work('lattice'),
    });
    // Sleeves are cut before hooks are sewn on; there they are counted and not measured.
    expect(needs(state).map(({ home }) => home)).toEqual([
      ...['sleeve|left|count', 'sleeve|right|count', 'hooks||count'],
    ]);
    const places = needs(state).map(({ place }) => place);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(new Set(places).size).toBe(3);
  });

  test('is measured by pieces, by an edge, by its length, or counted', () => {
    const state = garment({
      ...{ front, hooks, lace: work('lacing'), facing: work('facing', 'depth=4&seam=1&turn=0.6') },
      band: work('facing', 'depth=4&seam=1&turn=0.6&edge=80'),
    });
    const by = Object.fromEntries(needs(state).map((one) => [one.work, one.by]));
    expect(by).toEqual({
      ...{ front: 'piece', hooks: 'count', lace: 'length', facing: 'edge', band: 'piece' },
    });
  });
});

describe('how large it is', () => {
  test('isn’t known of a piece one of whose sizes waits, and why is said', () => {
    const sizes = (query: string) => need(garment({ a: work('piece', query) }), 'a');
    const none = sizes('width=40&length=&top=0&bottom=0&side=0&count=2');
    expect(none.size).toBeUndefined();
    expect(none.waits).toEqual([
      { home: 'a||along', trouble: { kind: 'not given', field: 'length' } },
    ]);
    const torn = sizes('width=4o&length=60&top=0&bottom=0&side=0&count=2');
    expect(torn.size).toBeUndefined();
    expect(torn.waits.map(({ trouble }) => trouble)).toContainEqual(
      expect.objectContaining({ kind: 'reading', field: 'width' }),
    );
  });

  test('of pleats waits for the cloth that nobody named, under the field it belongs in', () => {
    const query = 'finished=92&depth=4&seam=1&kind=knife&by=width&width=5';
    const { waits } = need(garment({ pleats: work('pleats', query) }), 'pleats');
    expect(waits.map(({ trouble }) => trouble)).toEqual([
      { kind: 'not given', field: 'deep' },
      { kind: 'not given', field: 'cloth' },
    ]);
  });

  test('a decision that is open behind one of its numbers is open behind it', () => {
    const demo = demoGarment(WAISTCOAT, demoWords.waistcoat, 'demo', 7, KNOWN);
    const many = { ...taking({ count: [output('hooks', 'count')] }), rank: 99 };
    const record = { ...demo, works: { ...demo.works, many } };
    const undecided = (decisions: object) =>
      need(begin(withKeys({ ...record, decisions: { ...decisions } }, KNOWN), KNOWN), 'many');
    expect(undecided(demo.decisions).undecided).toBe(false);
    expect(undecided({}).undecided).toBe(true);
  });

  test('what the edges of a piece take is known, also of one as long as a number of the garment', () => {
    const edges = { top: cm(1.5), bottom: cm(4), side: cm(1.5), other: cm(1.5) };
    expect(need(garment({ front }), 'front').edges).toEqual(edges);
    expect(need(garment({ patch: work('pocket') }), 'patch').edges).toBeUndefined();
    const back = work('piece', 'width=40&length=60');
    const state = garment({ back, front: taking({ length: [output('back', 'gives-length')] }) });
    expect(need(state, 'front').edges).toEqual(edges);
  });
});

test('what the number in a field takes away takes nothing, or waits where it always does', () => {
  const facing = KNOWN.get('facing');
  if (typeof facing !== 'object') throw new Error('no facing');
  /** A facing with a tape along the edge that is turned, which no turn takes away. */
  const taped = (always?: true) => {
    const material = { kind: 'tape' as const, ...(always && { always }) };
    const outputs = facing.outputs.map((one) => ({
      ...one,
      material: one.key === 'free-edge' ? material : undefined,
    }));
    return new Map(KNOWN).set('facing', { ...facing, outputs } as typeof facing);
  };
  const state = (turn: string, always?: true) => {
    const of = work('facing', `depth=4&seam=1&turn=${turn}`);
    return begin(garment({ of }).record, taped(always));
  };
  expect(needs(state('0.6'))).toMatchObject([{ by: 'length', size: { along: cm(0.6) } }]);
  expect(needs(state('0'))).toEqual([]);
  expect(needs(state('0', true))).toMatchObject([
    { size: undefined, waits: [{ trouble: { kind: 'not given', field: 'turn' } }] },
  ]);
});

describe('how far it is made', () => {
  const cut = (of: string) => [make(of, 'cut-width'), make(of, 'cut-length')];

  test('is told by the steps it is cut in, and by no work’s it takes a number of', () => {
    const state = garment({
      back: front,
      front: taking({ length: [output('back', 'cut-length')] }),
    });
    const other = doing(state, ...cut('back'));
    expect([need(other, 'back').state, need(other, 'front').state]).toEqual(['made', 'planned']);
    const half = doing(other, make('front', 'cut-width'));
    expect(need(half, 'front').state).toBe('partly made');
    expect(need(doing(half, make('front', 'cut-length')), 'front').state).toBe('made');
  });

  test('of closures it is the row they are sewn on in', () => {
    const [first, last] = [0, 6].map((rank) => ({
      ...({ do: 'make', home: homeOf('hooks', '', 'marks'), tape: 8000, now } as const),
      ...{ id: `m${rank}`, rank },
    }));
    const state = garment({ hooks });
    expect(need(state, 'hooks').state).toBe('planned');
    expect(need(doing(state, first!, last!), 'hooks').state).toBe('partly made');
  });

  test('of what has no step at all nothing is ever made, and it comes last', () => {
    const state = garment({ thread: work('thread'), front });
    expect(need(state, 'thread')).toMatchObject({ state: 'planned', place: 2 });
    expect(need(doing(state, ...cut('front')), 'thread').state).toBe('planned');
  });

  test('of what no step measures it is all that is cut, and not what is sewn then', () => {
    const gathers = garment({ gathers: work('gathers') });
    const sewn = gathers.answer.steps.filter(({ step }) => step.stage !== 'cut');
    expect(sewn.length).toBeGreaterThan(0);
    const half = doing(gathers, make('gathers', 'strip'));
    const all = doing(half, make('gathers', 'cut-deep'));
    const states = [gathers, half, all].map((state) => need(state, 'gathers').state);
    expect(states).toEqual(['planned', 'partly made', 'made']);
  });
});

test('a number of the garment that is taken away takes the need with it, or leaves it waiting', () => {
  const state = garment({ front: taking({ length: [quantity('gone')] }) });
  expect(need(state, 'front')).toMatchObject({ size: undefined, edges: undefined });
  expect(need(state, 'front').waits[0]?.trouble).toMatchObject({ kind: 'waits', field: 'length' });
});
