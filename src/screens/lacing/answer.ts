import type { Bench } from '../../controls/bench.ts';
import type { Answer, Draft, Line } from '../../controls/calculation.ts';
import { exactly, numberOnTape, onTape } from '../../controls/tape-text.ts';
import { lacingFigure } from '../../drawing/lacing-figure.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, toMm, ZERO } from '../../lengths/length.ts';
import type { Laced } from '../../sewing/lacing.ts';
import type { LacingDoubt } from '../../sewing/lacing-doubts.ts';
import { middleStart } from '../../sewing/lacing-halves.ts';
import type { LacingInput } from '../../sewing/lacing-input.ts';
import { PUBLISHED } from '../../sewing/lacing-kinds.ts';
import { COMFORTABLE, EVEN_HOLES } from '../../sewing/sources/lacing.ts';
import { lacingWords as words } from '../../words/lacing-words.ts';
import { stepOf } from './fields.ts';
import type { LacingRead } from './read.ts';
import { stepLines } from './steps.ts';

type Show = (x: ExactLength) => string;

/** The lace of a row as an answer. */
export function lacingAnswer(read: LacingRead, laced: Laced, draft: Draft, bench: Bench): Answer {
  const { input } = read;
  const show: Show = (x) => exactly(x, bench);
  const repeat = laced.strands[0]?.repeat;
  return {
    headline: {
      number: numberOnTape(laced.total, bench, upToGraduation),
      after: words.after,
    },
    sentence: sentence(input, laced, bench),
    lines: [
      ...numberLines(input, laced, bench),
      ...(repeat ? stepLines(repeat, read.before, show) : []),
    ],
    offers: [],
    warnings: warnings(read, laced, bench),
    cautions: [words.caution],
    listsLast: true,
    runs: [{ name: words.title, item: words.hole, run: laced.run }],
    figures: figures(input, laced, stepOf(draft, read.before)),
    workings: workings(input, laced, show),
  };
}

function sentence({ kind, tail }: LacingInput, laced: Laced, bench: Bench): string {
  const { pieces, each, middle } = laced;
  // What is cut is never shown shorter than it has to be.
  const up = (x: ExactLength) => onTape(x, bench, upToGraduation);
  return [
    pieces === 1 ? words.onePiece : words.pieces(pieces, up(each)),
    tail === ZERO ? words.noTails : words.tails(exactly(tail, bench)),
    ...(middle ? [words.fromMiddle(middle, middle.first.map(up), pieces > 1, slants(kind))] : []),
    ...(kind === 'saddle' ? [words.needles] : []),
    ...(kind === 'cross' ? [words.thereAndBack] : []),
  ].join(' ');
}

function numberLines({ kind }: LacingInput, laced: Laced, bench: Bench): Line[] {
  const { perPitch, factor, edge, middle, ends } = laced;
  const published = PUBLISHED[kind]?.value.map((times) => timesText(times, bench));
  const [least = '', most = ''] = published ?? [];
  return [
    { label: words.perPitch, value: exactly(perPitch, bench) },
    { label: words.factor, value: timesText(factor, bench) },
    ...(published ? [{ label: words.published, value: words.range(least, most) }] : []),
    { label: words.edge, value: exactly(edge, bench) },
    ...(middle
      ? [
          {
            label: words.half,
            value: words.halves(middle.halves.map((half) => exactly(half, bench))),
          },
          { label: words.begins(slants(kind)), value: words.place(middle.at) },
        ]
      : []),
    ...(ends ? [{ label: words.ends, value: endsText(kind, ends) }] : []),
  ];
}

/** Lacing with a slant that changes sides where its halves begin. */
function slants(kind: LacingInput['kind']): boolean {
  return kind === 'edge' || kind === 'outside';
}

function endsText(kind: LacingInput['kind'], ends: NonNullable<Laced['ends']>): string {
  const said = words.facesOf(ends);
  return kind === 'running' && ends[0] !== ends[1] ? `${said}; ${words.evenNeeded}` : said;
}

/** A factor to two places. */
function timesText(times: number, { decimalMark }: Bench): string {
  return String(Math.round(times * 100) / 100).replace('.', decimalMark);
}

function warnings(
  { input, offHoles }: LacingRead,
  { doubts, factor }: Laced,
  bench: Bench,
): string[] {
  const least = PUBLISHED[input.kind]?.value[0] ?? 0;
  const said = (doubt: LacingDoubt) => {
    switch (doubt.kind) {
      case 'cut-short':
        return words.cutShort(doubt.advance, doubt.stitches);
      case 'beyond':
        return words.beyond(timesText(doubt.by, bench), doubt.end);
      case 'off-published':
        return words.offPublished(factor < least, Math.round(doubt.off * 100));
    }
  };
  return [...doubts.map(said), ...(offHoles.length > 0 ? [words.offHoles(offHoles)] : [])];
}

function figures(
  input: LacingInput,
  { strands }: Laced,
  steps: number | undefined,
): NonNullable<Answer['figures']> {
  const { holes, pitch, margin, lace = margin } = input;
  const drawn = {
    strands,
    holes,
    start: middleStart(input),
    steps,
    pitch: toMm(pitch),
    margin: toMm(margin),
    // A hole is a little smaller than its lace (Texas 4-H L-382); neighbours stay apart.
    hole: Math.min(0.8 * toMm(lace), 0.44 * toMm(pitch)),
  };
  return (['front', 'back'] as const).map((face) => ({
    name: words.figure(face),
    figure: lacingFigure(drawn, face),
  }));
}

function workings(input: LacingInput, laced: Laced, show: Show): Answer['workings'] {
  const { kind, thickness, tail } = input;
  const { straight, passes, turns } = laced.parts;
  const turned = turns > 0 ? words.turned(turns, show(laced.extra)) : '';
  const tailed = tail > 0 ? words.tailed(show(tail)) : '';
  const numbers = [show(straight), passes, show(thickness)] as const;
  const sources = [PUBLISHED[kind], COMFORTABLE, ...(kind === 'running' ? [EVEN_HOLES] : [])];
  return [
    {
      formula: words.formula(...numbers, turned, tailed, show(laced.total)),
      source: words.derived,
    },
    ...sources.flatMap((one) => (one ? [{ formula: `${one.says}.`, source: one.source }] : [])),
  ];
}
