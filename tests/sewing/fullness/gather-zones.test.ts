/**
 * Derived here, no source, but that a strip is its edge times its fullness (row 13.3, NIMI, Dress Making, Trade
 * Practical 2, page 212) and an own sample (row 13.10): one zone is a frill.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, length, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import {
  type GatherZonesInput,
  gatherZones,
  partsOfZones,
} from '../../../src/sewing/fullness/gather-zones.ts';
import { gathers } from '../../../src/sewing/fullness/gathers.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
/** A back gathered to its yoke only in the middle. */
const YOKE: GatherZonesInput = {
  zones: [10, 20, 10].map(cm),
  ratios: [1, 2, 1],
  ends: cm(1),
  parts: 4,
};
const plan = (set: Partial<GatherZonesInput> = {}) => solved(gatherZones({ ...YOKE, ...set }));
const places = ({ marks }: { marks: readonly { at: number }[] }) =>
  marks.map(({ at }) => at / mm(1));

describe('worked by hand', () => {
  test('20 of 40 gathered twice: 60 and its ends, marked where zones meet and in quarters between', () => {
    const { edge, strip, cut, takes, marks } = plan();
    expect([edge, strip, cut].map(toMm)).toEqual([400, 600, 620]);
    expect(takes.map(toMm)).toEqual([100, 400, 100]);
    expect(places(marks.edge)).toEqual([100, 150, 200, 250, 300]);
    expect(places(marks.strip)).toEqual([110, 210, 310, 410, 510]);
    expect(marks.strip.marks.map(({ label }) => label)).toEqual(['1', '2', '3', '4', '5']);
  });

  test('of a strip that is there flat zones take their own, the rest goes as it is given', () => {
    const three = { zones: [10, 20, 10, 10].map(cm), ratios: [1, 2, 1, 4] };
    const { ratios, cut } = plan({ ...three, strip: cm(82) });
    // 80 − 20 flat are 60, for 2 × 20 + 4 × 10 = 80.
    expect([toMm(cut), ratios]).toEqual([820, [1, 1.5, 1, 3]]);
  });

  test('as many parts as marks were begun; of an odd number none', () => {
    expect([4, 5, 6].map((marks) => partsOfZones([1, 2, 1], marks))).toEqual([3, 4, 5]);
    expect(partsOfZones([1, 2, 3], 5)).toBeUndefined();
  });

  test('13.3: one zone is a frill: 1.80 m at 3 times is 5.40 m', () => {
    expect(toMm(plan({ zones: [cm(180)], ratios: [3], ends: ZERO }).cut)).toBe(5400);
  });

  test('13.10: 15 in of a sample that comes in 2 1/2 times: 37 1/2 in', () => {
    const { cut } = plan({ zones: [inches(15)], ratios: [2.5], ends: ZERO });
    expect(toInches(cut)).toBe(37.5);
  });
});

describe('refused', () => {
  test.each<[string, Partial<GatherZonesInput>, string[]]>([
    ['no zones', { zones: [], ratios: [] }, ['zones']],
    ['thirteen', { zones: Array.from({ length: 13 }, () => cm(1)) }, ['zones']],
    ['a zone of nothing', { zones: [cm(1), ZERO, cm(1)] }, ['zones']],
    ['under 1', { ratios: [1, 0.9, 1] }, ['ratios']],
    ['over 20', { ratios: [1, 20.1, 1] }, ['ratios']],
    ['not as many', { ratios: [1, 2] }, ['ratios']],
    ['ends under nothing', { ends: mm(-1) }, ['ends']],
    ['no part', { parts: 0 }, ['parts']],
    ['seventeen parts', { parts: 17 }, ['parts']],
    ['no strip', { strip: ZERO }, ['strip']],
    [
      'nothing to gather with the strip that is there',
      { ratios: [1, 1, 1], strip: cm(60) },
      ['ratios'],
    ],
    ['over a kilometre once it is as full', { zones: [10, 17_000, 10].map(cm) }, ['zones']],
    ['over a kilometre', { zones: [10, 60_000, 10].map(cm) }, ['zones']],
  ])('%s', (_, set, fields) => {
    expect(fieldsOf(gatherZones({ ...YOKE, ...set }))).toEqual(fields);
  });

  test('twenty times is taken, and a strip of nothing is said to be that', () => {
    expect(fieldsOf(gatherZones({ ...YOKE, ratios: [1, 20, 1] }))).toEqual([]);
    const none = gatherZones({ ...YOKE, strip: ZERO });
    expect(none).toMatchObject({ problems: [{ kind: 'not-positive' }] });
  });

  test('a strip from as long as its edge to what a zone takes at 20 times', () => {
    const of = (strip: number) => gatherZones({ ...YOKE, ratios: [1, 2, 4], strip: length(strip) });
    const [short, long] = [of(1), of(cm(9000))];
    // 10 flat, 2 × 20 + 4 × 10 = 80: 10 + 40 + 2, and 10 + 80 × 5 + 2.
    expect(short).toMatchObject({ problems: [{ kind: 'too-short', least: cm(52) }] });
    expect(long).toMatchObject({ problems: [{ kind: 'too-long', most: cm(412) }] });
    expect(solved(of(cm(52))).ratios).toEqual([1, 1, 2]);
    expect(solved(of(cm(412))).ratios).toEqual([1, 10, 20]);
  });
});

describe('laws', () => {
  const zone = fc.record({ long: typed(20, 600), full: fc.integer({ min: 100, max: 400 }) });
  const some = fc.record({
    all: fc.array(zone, { minLength: 1, maxLength: 6 }),
    ends: typed(0, 30),
    parts: fc.integer({ min: 1, max: 16 }),
  });

  test('each zone is a gathered strip of its own, and marks that meet divide it alike', () => {
    fc.assert(
      fc.property(some, ({ all, ends, parts }) => {
        const [zones, ratios] = [all.map(({ long }) => long), all.map(({ full }) => full / 100)];
        const { takes, marks, strip } = plan({ zones, ratios, ends, parts });
        const alone = zones.map((edge, i) =>
          solved(
            gathers({
              ...{ edge, flat: ZERO, full: { by: 'ratio', ratio: ratios[i]! } as const },
              ...{ ring: false, ends: ZERO, parts: 2 },
            }),
          ),
        );
        expect(alone.some((one, i) => Math.abs(one.strip - takes[i]!) > 1.01)).toBe(false);
        expect(Math.abs(strip - takes.reduce((sum, one) => sum + one, 0))).toBeLessThan(1.01);
        // Seen from one mark to the next, strip over edge is the fullness of the zone between.
        const at = (run: typeof marks.edge, first: number, last: number) => [
          first,
          ...run.marks.map((mark) => mark.at),
          last,
        ];
        const edges = at(marks.edge, 0, marks.edge.length);
        const strips = at(marks.strip, ends, strip + ends);
        const seen = edges.slice(1).map((place, i) => {
          return (strips[i + 1]! - strips[i]!) / (place - edges[i]!);
        });
        const wanted = ratios.flatMap((ratio) => Array(ratio === 1 ? 1 : parts).fill(ratio));
        expect(seen).toHaveLength(wanted.length);
        expect(seen.some((one, i) => Math.abs(one - wanted[i]) > 1e-3)).toBe(false);
        const full = ratios.filter((ratio) => ratio !== 1).length;
        if (full > 0) expect(partsOfZones(ratios, marks.edge.marks.length)).toBe(parts);
      }),
      { numRuns: 100, seed: 1310 },
    );
  });

  test('the strip that a fullness takes gives it back', () => {
    fc.assert(
      fc.property(some, ({ all, ends, parts }) => {
        const [zones, ratios] = [all.map(({ long }) => long), all.map(({ full }) => full / 100)];
        if (ratios.every((ratio) => ratio === 1)) return;
        const { cut } = plan({ zones, ratios, ends, parts });
        const again = plan({ zones, ratios, ends, parts, strip: cut });
        expect(again.ratios.some((one, i) => Math.abs(one - ratios[i]!) > 1e-4)).toBe(false);
        expect(partsOfZones(ratios, again.marks.edge.marks.length + 1) === parts).toBe(false);
      }),
      { numRuns: 100, seed: 1311 },
    );
  });
});
