import { expect, test } from 'vitest';
import { cutOutlines } from '../../../src/app/lay/cut-outlines.ts';
import { taskFor } from '../../../src/app/lay/lay-task.ts';
import { readOutlines } from '../../../src/app/lay/read-outlines.ts';
import type { LaidOf, LaidSize } from '../../../src/garment/record/cloth-lay.ts';
import type { PieceForm } from '../../../src/garment/record/piece-said.ts';
import { faultsOf } from '../../../src/lay/check-lay.ts';
import { boxOf, signedArea } from '../../../src/lay/outline.ts';
import { benchOf } from '../../controls/helpers.ts';
import { found, mostShared } from '../../lay/lays.ts';

const CM = 80_000;
const size = (more: Partial<LaidSize>): LaidSize => ({
  ...{ count: 1, along: 60 * CM, across: 40 * CM, fold: false },
  ...more,
});
const gore: PieceForm = {
  ...{ kind: 'four', long: 60 * CM, top: 10 * CM, bottom: 30 * CM, slant: 'both' },
};
async function task(pieces: LaidOf['pieces'], more: Partial<LaidOf> = {}) {
  const of: LaidOf = { width: 140 * CM, folded: false, nap: false, gap: 0, pieces, ...more };
  const outcome = taskFor(of, [], await cutOutlines(of));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.value;
}

test('gores end for end take less than their rectangles, tilted, mirrored and matched; the checker agrees', async () => {
  const pieces = {
    gore: size({ count: 4, outline: { form: gore } }),
    sleeve: size({
      ...{ count: 2, pair: true, tilt: 3 },
      outline: { form: { ...gore, slant: 'right', bows: [0, 2 * CM, -CM, 0] } },
    }),
    pocket: size({ along: 20 * CM, across: 20 * CM, oneWay: true, match: [0, 10 * CM] }),
  };
  const all = await task(pieces, { repeat: 8 * CM });
  expect(all.pieces.map(({ id, turns }) => [id, turns.length])).toEqual([
    ['gore', 2],
    ['sleeve', 6],
    ['sleeve~', 6],
    ['pocket', 1],
  ]);
  expect(all.repeat).toEqual({ along: 80, across: 0 });
  // By the place that was said, else by the upper left corner.
  expect(all.pieces.map(({ match }) => match?.map(Math.round))).toEqual([
    [0, 0],
    [0, 0],
    [0, -0],
    [0, 100],
  ]);
  const lay = found(all, { rounds: 200 })!;
  expect(faultsOf(all, lay)).toEqual([]);
  expect(mostShared(all, lay)).toBeLessThan(1);
  const pocket = lay.laid.find(({ id }) => id === 'pocket')!;
  // Its match is at its top: that falls on a stripe every 8 cm from the cut end.
  const off = (pocket.x - 100) / 80;
  expect(Math.abs(off - Math.round(off)) * 80).toBeLessThan(0.01);
});

test('what is added lies outside; on the fold nothing is added along it, and half is laid whole', async () => {
  const adds = [9, 4, 1, 2].map((of) => of * CM);
  const outline = { form: { ...gore, slant: 'right' as const }, adds };
  const { pieces } = await task({ back: size({ fold: true, outline }) });
  const { x0, x1, y0, y1 } = boxOf(pieces[0]!.outline);
  // 2 above, 4 below; twice 30 and its seam, which the slant makes a little wider.
  expect(x1 - x0).toBeCloseTo(660, 0);
  expect((y1 - y0) / 2).toBeGreaterThan(310);
  expect((y1 - y0) / 2).toBeLessThan(330);
  const bare = await task({ gore: size({ outline: { form: gore } }) });
  // By hand: half of 10 + 30, times 60.
  expect(signedArea(bare.pieces[0]!.outline)).toBeCloseTo(200 * 600, 0);
});

test('the second of a work done left and right lies as in a mirror', async () => {
  const form: PieceForm = { ...gore, slant: 'right' };
  const both = await task({
    left: size({ outline: { form } }),
    right: size({ outline: { form }, mirrored: true }),
  });
  const [left, right] = both.pieces.map(({ outline }) => outline);
  expect(left?.map(([x, y]) => [x, -y]).reverse()).toEqual(right);
});

test('an outline that is none is a problem of its piece, and nothing is laid', async () => {
  const form: PieceForm = { kind: 'points', points: [[0, 0]] };
  const pieces = { front: size({ outline: { form } }) };
  const of: LaidOf = { width: 140 * CM, folded: false, nap: false, gap: 0, pieces };
  expect(taskFor(of, [], await cutOutlines(of))).toMatchObject({
    ...{ ok: false, problem: { kind: 'no-outline', id: 'front', problem: { kind: 'too-few' } } },
  });
});

const read = (body: string, unitMm?: number) =>
  readOutlines(new File([body], 'a'), benchOf(), unitMm);

const drawing = (body: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="90mm" height="90mm" viewBox="0 0 90 90">${body}</svg>`;

/** A text in units of 16 bits behind its mark of their order (Unicode, byte order mark). */
function in16(text: string, bigFirst: boolean): Uint8Array<ArrayBuffer> {
  const view = new DataView(new ArrayBuffer(2 * text.length + 2));
  [0xfeff, ...Array.from(text, (one) => one.charCodeAt(0))].forEach((unit, i) => {
    view.setUint16(2 * i, unit, !bigFirst);
  });
  return new Uint8Array(view.buffer);
}

test('files in units of 16 bits, and with the line ends of old ones, are read; so are names with signs', async () => {
  const svg = drawing('<path id="Coat &amp; lining &#8211; &#x46;" d="M0 0h30v50z"/>');
  const dxf = '0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n8\na\n10\n0\n20\n0\n40\n9\n0\nENDSEC\n0\nEOF\n';
  for (const body of [svg, in16(svg, true), in16(svg, false)]) {
    const given = await readOutlines(new File([body], 'a'), benchOf());
    expect(given).toMatchObject({ found: [{ name: 'Coat & lining – F' }], said: [] });
  }
  expect(await read(dxf.replaceAll('\n', '\r'), 1)).toMatchObject({ found: [{ name: 'a' }] });
});

test('a drawing lies as it is seen: up is the top, and left is left', async () => {
  // A flag on its pole: the corner at the top left is square, the right side ends lower.
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="30mm" height="50mm" viewBox="0 0 30 50">
    <polygon points="0,0 30,10 0,50"/></svg>`;
  const given = await read(svg);
  if (given.kind !== 'outlines') throw new Error(given.kind);
  const { form, size: found } = given.found[0]!;
  const places = form.kind === 'points' ? form.points.map(([a, b]) => [a / 8000, b / 8000]) : [];
  expect(places).toHaveLength(3);
  expect(places).toEqual(
    expect.arrayContaining([
      [0, 0],
      [10, 30],
      [50, 0],
    ]),
  );
  expect(found).toEqual({ long: 50 * 8000, wide: 30 * 8000 });
});

test.each([
  ['an empty file', '', /Neither an SVG nor a DXF/],
  ['a picture', '\x89PNG\r\n\x1a\n', /Neither an SVG nor a DXF/],
  [
    'half a file',
    '<svg width="9mm" height="9mm" viewBox="0 0 9 9"><path d="M0 0h9',
    /from about line/,
  ],
  [
    'other units',
    '  0\nSECTION\n  2\nHEADER\n  9\n$INSUNITS\n 70\n 12\n  0\nENDSEC\n  0\nSECTION\n  2\nENTITIES\n  0\nLINE\n  8\na\n  0\nENDSEC\n  0\nEOF\n',
    /save it in millimetres/,
  ],
  ['nothing in it', '<svg width="9mm" height="9mm" viewBox="0 0 9 9"/>', /no outline in it/],
  // Lengths no number of the app can hold once stopped the reading.
  ['out of all measure', drawing('<path d="M0 0h1e200v1e200z"/>'), /farther than 5000 cm from/],
  ['less than half a millimetre', drawing('<path d="M0 0h.4v.4z"/>'), /less than 0\.1 cm/],
  [
    'an eight',
    drawing('<path d="M0 0l50 50v-50l-50 50z"/>'),
    /2\.5 cm to the right and 2\.5 cm down/,
  ],
  [
    'turned by its style, which is not followed',
    drawing('<path style="fill:none; transform: rotate(45deg)" d="M0 0h50v50z"/>'),
    /turn it into a plain path/,
  ],
] as const)('a file that gives nothing is refused with what to do: %s', async (_, body, why) => {
  const given = await read(body);
  expect(given).toMatchObject({ kind: 'refused', said: expect.stringMatching(why) });
});

test('one too large is refused unread, and one that can’t be opened is said', async () => {
  const arrayBuffer = () => Promise.reject(new Error('gone'));
  expect(await readOutlines({ size: 1e9, arrayBuffer }, benchOf())).toMatchObject({
    said: expect.stringMatching(/far larger/),
  });
  expect(await readOutlines({ size: 10, arrayBuffer }, benchOf())).toMatchObject({
    said: expect.stringMatching(/can’t open/),
  });
});
