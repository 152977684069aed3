import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactLength, type Length, mm, toMm } from '../../../src/lengths/length.ts';
import { leastSlit, type SlitLevel } from '../../../src/sewing/wearer/least-slit.ts';
import { opensTo, passOver } from '../../../src/sewing/wearer/pass-over.ts';
import { roomAtHip, type VentInput, ventFrom } from '../../../src/sewing/wearer/vent.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (value: number) => mm(10 * value);
const pass = (edge: number, body: number, ease: number) => ({
  ...{ edge: cm(edge), body: cm(body), ease: cm(ease) },
});

describe('published, worked', () => {
  test('20.50 a neckline of 40, a head of 57.4 and 2 to spare: a slit of 9.7 cm', () => {
    const { needs, least, by } = solved(passOver(pass(40, 57.4, 2)));
    expect([toMm(needs), toMm(least), by]).toEqual([594, 97, 'edges']);
    expect(toMm(opensTo(cm(40), least))).toBe(594);
  });

  test('20.49 a straight slit for a head of 56 cm is half of that', () => {
    expect(toMm(solved(passOver(pass(0, 56, 0))).least)).toBe(280);
  });

  test('20.35 a cuff as wide as the hand needs none', () => {
    expect(solved(passOver(pass(21.2, 21.2, 0)))).toMatchObject({ least: 0, by: 'closed' });
  });
});

// The design's case, worked by hand: by the edges alone 14 cm, which would jam at the end.
describe('what widens below', () => {
  test('70 at the waist, 100 at 20 cm, hips of 98: open to where it is 98, 18.7 cm', () => {
    const skirt = { ...pass(70, 98, 0), below: cm(100), down: cm(20) };
    const { least, by } = solved(passOver(skirt));
    expect(toMm(least) / 10).toBeCloseTo(18.667, 3);
    expect(by).toBe('width');
    expect(toMm(solved(passOver(pass(70, 98, 0))).least)).toBe(140);
  });

  test('just wide enough further down, it is opened to there', () => {
    const tube = { ...pass(70, 98, 0), below: cm(98), down: cm(20) };
    expect(solved(passOver(tube))).toMatchObject({ least: cm(20), by: 'width' });
  });

  test('what is just wide enough needs no slit, wherever it is known', () => {
    const level = (from: number, garment: number) => ({
      from: cm(from),
      garment: cm(garment),
      needs: cm(98),
    });
    const sack = [level(0, 98), level(20, 98), level(40, 120)];
    expect(leastSlit(sack)).toEqual({ slit: 0, by: 'closed' });
    const bag = [level(0, 88), level(10, 98), level(20, 98), level(30, 120)];
    expect(leastSlit(bag)).toEqual({ slit: cm(10), by: 'width' });
  });

  test('too narrow further down, no opening is enough', () => {
    const tube = { ...pass(70, 98, 0), below: cm(96), down: cm(20) };
    expect(passOver(tube)).toMatchObject({
      ok: false,
      problems: [{ kind: 'does-not-fit', field: 'below', room: cm(96), needed: cm(98) }],
    });
  });

  test('a width without how far down it is, or the other way round, says nothing', () => {
    for (const half of [{ below: cm(60) }, { down: cm(20) }]) {
      expect(solved(passOver({ ...pass(70, 98, 0), ...half }))).toMatchObject({
        ...{ least: cm(14), by: 'edges' },
      });
    }
  });

  test('what is wrong names its field', () => {
    expect(fieldsOf(passOver(pass(-1, 57, 2)))).toEqual(['edge']);
    expect(fieldsOf(passOver(pass(40, 0, -1)))).toEqual(['body', 'ease']);
    const bad = { ...pass(40, 57, 2), below: cm(0), down: cm(0) };
    expect(fieldsOf(passOver(bad))).toEqual(['below', 'down']);
  });
});

const jacket: VentInput = {
  ...{ hip: cm(100), ease: cm(5), seat: cm(108), hem: cm(100) },
  ...{ down: cm(20), long: cm(40) },
};

// Worked by hand: from 108 to 100 over 20 cm it is 105 wide three eighths of the way down, 7.5 cm.
describe('a vent', () => {
  test('begins where the garment is as wide as hip and ease', () => {
    const { vent, begins, by } = solved(ventFrom(jacket));
    expect([toMm(vent), toMm(begins), by]).toEqual([125, 275, 'width']);
    expect(solved(roomAtHip(jacket))).toEqual({ needs: cm(105), ease: cm(8), lacks: cm(-3) });
  });

  test('is none where all of it is wide enough', () => {
    expect(solved(ventFrom({ ...jacket, hem: cm(106) }))).toMatchObject({ vent: 0, by: 'closed' });
  });

  test('goes higher for a step: 106 at the hip, 96 at the hem of a skirt, 130 with a step', () => {
    const skirt = { ...jacket, seat: cm(106), hem: cm(96), down: cm(20), long: cm(70) };
    // The garment loses 0.2 a cm, the step takes 0.5: 1 is used up 10/7 cm below the hip.
    const { begins } = solved(ventFrom({ ...skirt, stride: cm(130) }));
    expect(toMm(begins)).toBeCloseTo(200 + 100 / 7, 4);
  });

  test('of a great step over a little length is decided by how far its edges give way', () => {
    // 30 short at the hem: 15 of vent at least; it is wide enough 2/3 × 18 cm up, at 12.
    const short = { ...jacket, seat: cm(120), hem: cm(120), long: cm(38), stride: cm(150) };
    expect(solved(ventFrom(short))).toMatchObject({ vent: cm(15), by: 'edges' });
  });

  test('too narrow at the hip it begins above, which can be told with the top edge alone', () => {
    const tight = { ...jacket, seat: cm(101) };
    expect(fieldsOf(ventFrom(tight))).toEqual(['seat']);
    expect(solved(roomAtHip(tight)).lacks).toBe(cm(4));
    // The body from 80, the garment from 90: 5 to spare at the top, 4 short at the hip: 5/9 of 20 down.
    const known = { ...tight, bodyTop: cm(80), top: cm(90) };
    expect(toMm(solved(ventFrom(known)).begins)).toBeCloseTo((200 * 5) / 9, 4);
    expect(fieldsOf(ventFrom({ ...known, top: cm(84) }))).toEqual(['top']);
  });

  test('may be as long as the garment, and no longer', () => {
    // 150 short at the hem: 75 of vent.
    const step = { ...jacket, seat: cm(110), hem: cm(50), stride: cm(200) };
    const long = (of: number) => ventFrom({ ...step, long: of as Length });
    expect(boundTold(long, cm(60), 'long', 'least')).toBe(cm(75));
  });

  test('what is wrong names its field', () => {
    expect(fieldsOf(ventFrom({ ...jacket, long: cm(20) }))).toEqual(['long']);
    expect(fieldsOf(ventFrom({ ...jacket, hip: cm(0), hem: cm(0) }))).toEqual(['hip', 'hem']);
    const step = { ...jacket, seat: cm(110), hem: cm(50), stride: cm(200) };
    expect(fieldsOf(ventFrom(step))).toEqual(['long']);
  });
});

const size = fc.integer({ min: 100, max: 2000 });
const levels = fc
  .tuple(
    fc.array(fc.tuple(fc.integer({ min: 10, max: 400 }), size, size), { maxLength: 3 }),
    size,
    size,
  )
  .map(([further, garment, needs]): SlitLevel[] => {
    const all: SlitLevel[] = [{ from: mm(0), garment: mm(garment), needs: mm(needs) }];
    for (const [step, round, wanted] of further) {
      const from = exactLength((all.at(-1)?.from ?? 0) + mm(step));
      all.push({ from, garment: mm(round), needs: mm(wanted) });
    }
    return all;
  });

/** How much is short at a place between levels. */
function shortAt(all: readonly SlitLevel[], y: number): number {
  const i = all.findIndex(({ from }, k) => k > 0 && y <= from);
  const [a, b] = i < 0 ? [all.at(-1), all.at(-1)] : [all[i - 1], all[i]];
  if (!a || !b) throw new Error('no level');
  const t = a === b ? 0 : (y - a.from) / (b.from - a.from);
  return (b.needs - b.garment) * t + (a.needs - a.garment) * (1 - t);
}

/** A second road: walked in small steps, whether all passes with a slit. */
function passes(all: readonly SlitLevel[], slit: number): boolean {
  const long = all.at(-1)?.from ?? 0;
  const walked = Array.from({ length: 401 }, (_, i) => (i / 400) * long);
  return [...walked, ...all.map(({ from }) => from)].every((y) => {
    const short = shortAt(all, y) - 1; // a unit of rounding
    return y < slit ? short <= 2 * (slit - y) : short <= 0 || all.length === 1;
  });
}

test('walked down in small steps, all passes with the least slit, and not with a shorter one', () => {
  fc.assert(
    fc.property(levels, (all) => {
      const { slit } = leastSlit(all);
      if (slit === undefined) {
        expect(shortAt(all, all.at(-1)?.from ?? 0)).toBeGreaterThan(0);
        return;
      }
      expect(passes(all, slit)).toBe(true);
      const step = (all.at(-1)?.from ?? 0) / 400 + mm(1);
      if (slit > step) expect(passes(all, slit - step)).toBe(false);
    }),
    { seed: 1514 },
  );
});

describe('a vent up to the top edge', () => {
  const SKIRT: VentInput = {
    ...{ hip: cm(100), ease: cm(4), seat: cm(102), hem: cm(90), down: cm(20), long: cm(60) },
  };

  test('a top edge counts only beside what passes there', () => {
    const refused = { problems: [{ field: 'seat', room: cm(102), needed: cm(104) }] };
    expect(ventFrom(SKIRT)).toMatchObject(refused);
    expect(ventFrom({ ...SKIRT, top: cm(80) })).toMatchObject(refused);
    expect(ventFrom({ ...SKIRT, bodyTop: cm(70) })).toMatchObject(refused);
    expect(ventFrom({ ...SKIRT, top: cm(80), bodyTop: cm(70) }).ok).toBe(true);
  });

  test('narrower there than the body with its ease, nothing passes', () => {
    expect(ventFrom({ ...SKIRT, top: cm(72), bodyTop: cm(70) })).toMatchObject({
      problems: [{ kind: 'does-not-fit', field: 'top', room: cm(72), needed: cm(74) }],
    });
  });

  test('longer than down to the hip, which is told only of lengths that can be', () => {
    expect(fieldsOf(ventFrom({ ...SKIRT, long: cm(20) }))).toEqual(['long']);
    expect(fieldsOf(ventFrom({ ...SKIRT, long: cm(20), hem: cm(0) }))).toEqual(['hem']);
  });
});
