import { edgingWords as words } from '#words/calculations/edging-words.ts';
import { holeWords } from '#words/common/hole-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, NamedRun } from '../../calculation/calculation.ts';
import { byTape } from '../../calculation/tape-text.ts';
import type { Figure } from '../../drawing/figure.ts';
import { stripCorner, stripPart } from '../../drawing/strip-figure.ts';
import type { DrawnStrip } from '../../drawing/strip-places.ts';
import { type ExactLength, exactLength, toMm, ZERO } from '../../lengths/length.ts';
import type { HoleRow, StripHoles, StripInput } from '../../sewing/edging/strip.ts';
import { strikesOf, websOf } from '../../sewing/edging/strip-material.ts';
import { drawnOf } from './drawn.ts';
import { joinLine } from './joins.ts';
import type { EdgingInput } from './strip.ts';
import { workingsOf } from './workings.ts';

type Show = (x: ExactLength) => string;

/** The holes of a strip as an answer. */
export function edgingAnswer(input: EdgingInput, holes: StripHoles, bench: Bench): Answer {
  const { strip, teeth } = input;
  const show: Show = (x) => byTape(x, bench);
  const webs = websOf(strip, holes);
  const strikes = teeth === undefined ? undefined : strikesOf(strip, holes, teeth);
  const joins = joinLine(input, holes, bench);
  return {
    headline: { number: String(holes.count), after: words.holes(holes.count) },
    sentence: sentence(strip, holes, show),
    lines: [
      ...pitchLines(strip, holes, show),
      ...leftLines(strip, holes, show),
      ...middleLines(holes),
      ...webs.map(({ place, clear }) => ({ label: words.webs[place], value: show(clear) })),
      ...(strikes ? [{ label: words.strikes(teeth ?? 0), value: String(strikes.count) }] : []),
      ...joins.lines,
    ],
    offers: [],
    warnings: [
      ...webs.flatMap(({ place, clear, thin }) =>
        thin ? [words.thin(place, show(clear), show(strip.hole))] : [],
      ),
      ...(strikes && !strikes.fits ? [words.ironOff(show(strikes.off))] : []),
      ...joins.warnings,
    ],
    cautions: [holeWords.punch],
    listsLast: true,
    runs: runsOf(strip, holes),
    figures: figures(strip, holes),
    workings: workingsOf(strip, holes, bench),
  };
}

function sentence(
  { corners, rows: wanted, fit, follow }: StripInput,
  holes: StripHoles,
  show: Show,
) {
  const { rows, count } = holes;
  if (follow) return words.followed(count, rows.length, wanted === 'staggered');
  if (corners.length > 0) {
    return words.turned(count, rows.length, wanted === 'staggered', fit === 'loop');
  }
  const each = rows.map((row) => ({
    count: row.count,
    pitch: show(row.pitches[0] ?? ZERO),
    first: show(row.ends?.start ?? ZERO),
  }));
  return words.sentence(each, fit === 'loop');
}

/** What each side of each row is called. */
function named(rows: StripHoles['rows'], i: number, side: number): string {
  const row = words.row(i + 1, rows.length);
  return (rows[i]?.runs.length ?? 0) > 1 ? words.side(row, side + 1) : row;
}

function pitchLines({ pitch, follow }: StripInput, { rows }: StripHoles, show: Show): Line[] {
  if (follow) return rows.flatMap((row, i) => stepLine(row, named(rows, i, 0), show));
  return rows.flatMap(({ pitches, count }, i) => {
    if (count < 2) return [];
    return pitches.map((own, side) => {
      const off = show(exactLength(Math.abs(own - pitch)));
      const by = own > pitch ? words.more(off) : words.less(off);
      const value = off === show(ZERO) ? show(own) : words.changed(show(own), by);
      return { label: words.pitch(named(rows, i, side)), value };
    });
  });
}

/** How far apart holes are that follow others. */
function stepLine({ pitches }: HoleRow, row: string, show: Show): Line[] {
  const [least, widest = least] = pitches;
  if (least === undefined || widest === undefined) return [];
  const [from, to] = [show(least), show(widest)];
  return [{ label: words.pitch(row), value: from === to ? from : words.steps(from, to) }];
}

function leftLines({ fit, radius }: StripInput, { over }: StripHoles, show: Show): Line[] {
  const far = fit === 'far-end';
  const left = show(far ? over.end : over.start);
  if (left === show(ZERO)) return [];
  const value = far ? words.leftFar(left) : words.leftBoth(left);
  return [{ label: words.left(radius !== undefined), value }];
}

function middleLines({ rows }: StripHoles): Line[] {
  return rows.flatMap(({ middle }, i) =>
    middle ? [{ label: words.middleOf(named(rows, i, 0)), value: words.place(middle) }] : [],
  );
}

function runsOf({ width, hole }: StripInput, { rows }: Pick<StripHoles, 'rows'>): NamedRun[] {
  return rows.flatMap(({ runs, across }, i) =>
    runs.map((run, side) => ({
      name: named(rows, i, side),
      item: words.hole,
      run,
      strip: { across, width, hole },
    })),
  );
}

function figures(strip: StripInput, { rows }: StripHoles): NonNullable<Answer['figures']> {
  const drawing = (name: string, draw: (drawn: DrawnStrip) => Figure) => {
    const made = (runs: readonly NamedRun[]) =>
      draw(
        drawnOf(
          strip,
          rows,
          runs.map(({ run }) => run),
        ),
      );
    return { name, draw: () => made(runsOf(strip, { rows })), made };
  };
  if (strip.corners.length > 0) {
    const corner = toMm(rows[0]?.runs[0]?.length ?? ZERO);
    return [drawing(words.corner, (drawn) => stripCorner(drawn, corner, strip.angle))];
  }
  return [
    drawing(words.start, (drawn) => stripPart(drawn, 'start')),
    drawing(words.centre, (drawn) => stripPart(drawn, 'middle')),
  ];
}
