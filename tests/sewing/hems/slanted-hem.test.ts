/**
 * Published: 2.1 (US Army FM 10-16, fig. 8-3), 2.3 (It's Fun to Sew a Cotton School Dress), 2.4 (the same
 * and a Wisconsin circular). The slant is derived here: the mirror is also found by folding points over the hem line.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, type Length, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type SlantedHemInput, slantedHem } from '../../../src/sewing/hems/slanted-hem.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
/** Half a trouser leg, longer at the heel. */
const LEG: SlantedHemInput = {
  pieces: [{ one: cm(100), other: cm(101.5) }],
  across: cm(20),
  depth: cm(4),
  turn: cm(1),
};
const piece = (input: SlantedHemInput, i = 0) => solved(slantedHem(input)).pieces[i]!;
const inMm = (x: number) => Number(toMm(x as Length).toFixed(3));

describe('worked', () => {
  test('D: 30 deep, a slant of 0.2 rad: its side ends 11.92 beside the piece’s own', () => {
    const across = mm(100);
    const one = mm(500);
    const other = length(one + Math.round(Math.tan(0.2) * across));
    const { angle, mirror } = piece({
      pieces: [{ one, other }],
      across,
      depth: mm(30),
      turn: ZERO,
    });
    expect(angle).toBeCloseTo(0.2, 5);
    expect(inMm(mirror.aside)).toBeCloseTo(60 * Math.sin(0.2), 3);
    expect(inMm(mirror.down)).toBeCloseTo((30 * Math.cos(0.4)) / Math.cos(0.2), 3);
  });

  test('15 longer over 200: 50 square are 50.14 along the sides, and 4 cm turn 5.98 aside', () => {
    const { along, below, cut, mirror, trims } = piece(LEG);
    expect([along, below, mirror.aside].map(inMm)).toEqual([200.562, 50.14, 5.983]);
    expect([cut.one, cut.other].map(inMm)).toEqual([1050.14, 1065.14]);
    expect(trims).toBeUndefined();
  });

  test.each([
    ['2.1: 1 1/2 in there, 1/2 in turned in', 1.5, 0.5, 1],
    ['2.4: 2 3/4 in there, 1/4 in turned in', 2.75, 0.25, 2.5],
  ])('%s, straight: so deep', (_, there, turn, deep) => {
    const one = inches(20);
    const cloth = length(one + inches(there));
    const found = solved(
      slantedHem({
        pieces: [{ one, other: one, there: { one: cloth, other: cloth } }],
        across: inches(8),
        turn: inches(turn),
      }),
    );
    expect([found.depth, found.turn]).toEqual([inches(deep), inches(turn)]);
    expect(found.pieces[0]!.mirror.aside).toBe(0);
  });

  test('2.3: 1/2 in there, turned twice equally: 1/4 in and 1/4 in', () => {
    const one = inches(20);
    const there = { one: inches(20.5), other: inches(20.5) };
    const input = {
      pieces: [{ one, other: one, there }],
      across: inches(8),
      turn: 'equal',
    } as const;
    const { depth, turn } = solved(slantedHem(input));
    expect([depth, turn]).toEqual([inches(0.25), inches(0.25)]);
  });

  test('a pair is as deep as the shorter of it allows, and the rest is trimmed', () => {
    const there = { one: cm(104), other: cm(104) };
    const pair: SlantedHemInput = {
      pieces: [
        { one: cm(100), other: cm(100), there },
        { one: cm(99), other: cm(99), there },
      ],
      across: cm(20),
      turn: cm(1),
    };
    const { depth, pieces } = solved(slantedHem(pair));
    expect(toMm(depth)).toBe(30);
    expect(pieces.map(({ trims }) => inMm(trims!.one))).toEqual([0, 10]);
    const alone = solved(slantedHem({ ...pair, pieces: pair.pieces.slice(1) }));
    expect(toMm(alone.depth)).toBe(40);
  });

  test('cloth cut straight across under a slanted hem line: the longer side has the least', () => {
    const there = { one: cm(105), other: cm(105) };
    const { depth, pieces } = solved(
      slantedHem({ ...LEG, pieces: [{ ...LEG.pieces[0]!, there }], depth: undefined }),
    );
    expect(inMm(depth)).toBeCloseTo((35 * 200) / Math.hypot(200, 15) - 10, 3);
    expect(inMm(pieces[0]!.trims!.one)).toBeCloseTo(15, 3);
    expect(pieces[0]!.trims!.other).toBe(0);
  });
});

describe('refused', () => {
  const of = (set: Partial<SlantedHemInput>) => fieldsOf(slantedHem({ ...LEG, ...set }));
  const there = { one: cm(104), other: cm(105) };

  test.each<[string, Partial<SlantedHemInput>, string[]]>([
    ['no length', { pieces: [{ one: ZERO, other: mm(-1) }] }, ['one', 'other']],
    ['no width', { across: ZERO }, ['across']],
    ['no depth', { depth: ZERO }, ['depth']],
    ['a turn under nothing', { turn: mm(-1) }, ['turn']],
    ['a turn deeper than the hem', { turn: cm(4.1) }, ['turn']],
    ['as steep as across', { pieces: [{ one: cm(10), other: cm(30) }] }, ['other']],
    ['as steep the other way', { pieces: [{ one: cm(31), other: cm(10) }] }, ['one']],
    ['deeper than a side', { pieces: [{ one: cm(3), other: cm(5) }] }, ['depth']],
    [
      'a raw edge on the hem line, of the second',
      {
        pieces: [
          { one: cm(100), other: cm(100), there },
          { one: cm(104), other: cm(106), there },
        ],
      },
      ['secondThereOne', 'secondThereOther'],
    ],
    [
      'a turn that leaves nothing',
      { depth: undefined, turn: cm(4), pieces: [{ one: cm(100), other: cm(100), there }] },
      ['turn'],
    ],
    [
      'a turn deeper than what it leaves',
      { depth: undefined, turn: cm(2.5), pieces: [{ one: cm(100), other: cm(100), there }] },
      ['turn'],
    ],
    [
      'hardly a unit of cloth',
      {
        depth: undefined,
        turn: 'equal',
        pieces: [
          {
            ...{ one: cm(100), other: cm(100) },
            there: { one: length(cm(100) + 1), other: cm(110) },
          },
        ],
      },
      ['thereOne'],
    ],
    [
      'a hem of the cloth there is that is deeper than its piece',
      { depth: undefined, pieces: [{ one: cm(5), other: cm(3), there }] },
      ['other'],
    ],
  ])('%s', (_, set, fields) => {
    expect(of(set)).toEqual(fields);
  });

  test('a hem as deep as its shorter side, and hardly a unit of cloth turned once', () => {
    const short = { pieces: [{ one: cm(4), other: cm(5) }] };
    expect(of({ ...short, depth: cm(4) })).toEqual([]);
    const unit = { one: length(cm(100) + 1), other: length(cm(101.5) + 1) };
    const pieces = [{ ...LEG.pieces[0]!, there: unit }];
    expect(of({ depth: undefined, turn: ZERO, pieces })).toEqual(['thereOne']);
    expect(() => slantedHem({ ...LEG, depth: undefined })).toThrow(/neither a depth nor cloth/);
  });

  test('what is asked for is the most that works', () => {
    const steep = slantedHem({ ...LEG, pieces: [{ one: cm(10), other: cm(30) }] });
    expect(steep).toMatchObject({ problems: [{ kind: 'not-under', under: cm(30) }] });
    const equal = { pieces: [{ one: cm(100), other: cm(100), there }], depth: undefined };
    const outcome = slantedHem({ ...LEG, ...equal, turn: cm(2.5) });
    expect(outcome).toMatchObject({ problems: [{ kind: 'too-long', most: cm(2) }] });
    expect(toMm(solved(slantedHem({ ...LEG, ...equal, turn: cm(2) })).depth)).toBe(20);
  });
});

describe('laws', () => {
  const sides = fc.record({ one: typed(300, 1200), drop: typed(0, 80), first: fc.boolean() });
  const turns = fc.record({
    depth: typed(10, 80),
    part: fc.double({ min: 0, max: 1, noNaN: true }),
  });

  test('folded over the hem line and over the first turn, every corner of the allowance lies on the side it belongs to', () => {
    fc.assert(
      fc.property(
        sides,
        typed(100, 500),
        turns,
        ({ one, drop, first }, across, { depth, part }) => {
          const other = length(one + drop);
          const turn = length(Math.round(part * depth));
          const ends = first ? { one, other } : { one: other, other: one };
          const { pieces } = solved(slantedHem({ pieces: [ends], across, depth, turn }));
          const { mirror, below, angle } = pieces[0]!;
          // The shorter side is x = 0, the longer x = across; y downwards, the hem line between (0, 0) and (across, drop).
          const line = [Math.cos(angle), Math.sin(angle)] as const;
          for (const [x, y, out] of [
            [0, 0, -1],
            [across, drop, -1],
          ] as const) {
            const corner = [x + out * mirror.aside, y + mirror.down] as const;
            const [dx, dy] = [corner[0] - x, corner[1] - y];
            const along = dx * line[0] + dy * line[1];
            const folded = [2 * along * line[0] - dx, 2 * along * line[1] - dy] as const;
            expect(x + folded[0]).toBeCloseTo(x, 2); // on its own side, above the hem line
            expect(folded[1]).toBeLessThan(0);
            // As deep, square to the hem line, as the hem is.
            expect(-dx * line[1] + dy * line[0]).toBeCloseTo(depth, 2);
          }
          expect(below * Math.cos(angle)).toBeCloseTo(depth + turn, 2);
        },
      ),
      { numRuns: 200, seed: 2101 },
    );
  });

  test('cut to what a depth asks for, the cloth gives that depth again, with nothing over; turned round, the same', () => {
    fc.assert(
      fc.property(sides, typed(100, 500), turns, ({ one, drop }, across, { depth, part }) => {
        const turn = length(Math.round(part * depth));
        const other = length(one + drop);
        const asked = solved(slantedHem({ pieces: [{ one, other }], across, depth, turn }));
        const { cut } = asked.pieces[0]!;
        const there = { one: length(Math.ceil(cut.one)), other: length(Math.ceil(cut.other)) };
        const given = solved(slantedHem({ pieces: [{ one, other, there }], across, turn }));
        expect(Math.abs(given.depth - depth)).toBeLessThanOrEqual(1);
        expect(given.pieces[0]!.trims!.one).toBeLessThan(3);
        const round = slantedHem({
          pieces: [{ one: other, other: one, there: { one: there.other, other: there.one } }],
          ...{ across, turn },
        });
        expect(solved(round).depth).toBe(given.depth);
        expect(solved(round).pieces[0]!.mirror).toEqual(given.pieces[0]!.mirror);
      }),
      { numRuns: 200, seed: 2102 },
    );
  });
});
