import { dartWords as words } from '#words/calculations/dart-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { percentText, said } from '../../calculation/tape-said.ts';
import { byTape, exactly, numberOnTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, mm, ZERO } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { CLUSTER_SHORT_OF, SHORT_OF } from '../../sewing/sources/darts.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { Darted, Made } from './darted.ts';
import { dartFigure } from './figure.ts';
import { angleText, dartWorkings } from './workings.ts';

/** Narrower than this a dart is eased; wider than that it points: common practice, no source. */
const TINY = mm(3);
const POINTED = Math.PI / 6;
/** Less than this is eased rather than gathered: common practice, no source. */
const EASED = 1.2;
/** Less than this, in radians, is no kink that a hand can sew. */
const SMOOTH = 0.005;
/** How far from the dart a kink is told. */
const KINK_AT = mm(50);

/** A dart as an answer. */
export function dartAnswer(found: Darted, bench: Bench): Answer {
  const { made, dart } = found;
  const number =
    made.what === 'edge'
      ? numberOnTape(made.edge.cutTip, bench, upToGraduation)
      : numberOnTape(asNumber(made), bench);
  return {
    headline: { before: number.rounded ? words.about : '', number, after: words.after[made.what] },
    sentence: sentence(found, bench),
    lines: lines(found, bench),
    offers: [],
    warnings: warnings(found, bench),
    cautions: onlySaid([
      made.what === 'edge' && words.trim,
      made.what === 'edge' && cautionWords.shears,
      cautionWords.pins,
      turned.iron(IRON_ONE_DOT.value),
    ]),
    runs: [],
    figures: [
      {
        name: figureName(made.what),
        draw: () => dartFigure({ ...found, dart }),
      },
    ],
    workings: dartWorkings(found, bench),
  };
}

/** What a drawing of it is called. */
export function figureName(what: Made['what']): string {
  return { edge: words.figure, two: words.figureTwo }[what as 'edge' | 'two'] ?? words.figureBeside;
}

function asNumber(made: Exclude<Made, { what: 'edge' }>): ExactLength {
  switch (made.what) {
    case 'two':
      return made.legs.above;
    case 'moved':
      return made.moved.width;
    case 'gathers':
      return made.gathered.strip;
    case 'seam':
      return made.seamed.kept;
  }
}

function sentence({ asked, dart, made }: Darted, bench: Bench): string {
  switch (made.what) {
    case 'edge':
      return words.sentence.edge(said(dart.width, bench), said(dart.middle, bench));
    case 'two':
      return words.sentence.two(said(dart.width, bench), said(made.legs.below, bench));
    case 'moved':
      return words.sentence.moved(asked.parts ?? 1);
    case 'gathers': {
      const times = shownNumber(made.gathered.ratio, 2, bench.decimalMark);
      return words.sentence.gathers(exactly(asked.zone ?? ZERO, bench), times);
    }
    case 'seam':
      return words.sentence.seam(byTape(made.seamed.taken, bench));
  }
}

function lines({ asked, dart, made }: Darted, bench: Bench): Line[] {
  const degrees = (x: number) => words.degrees(angleText(x, bench));
  const short = shortOf(asked.full, dart.middle);
  return linesSaid([
    [words.angle, made.what !== 'two' && degrees(dart.angle)],
    [words.width, asked.by === 'angle' && made.what !== 'two' && byTape(dart.width, bench)],
    [words.tip, made.what === 'edge' && asked.seam > 0 && byTape(made.edge.tip, bench)],
    [words.cutLeg, made.what === 'edge' && asked.seam > 0 && byTape(made.edge.cutLeg, bench)],
    [words.below, made.what === 'two' && byTape(made.legs.below, bench)],
    [words.each, made.what === 'moved' && asked.parts !== 1 && degrees(made.moved.angle)],
    [
      words.more,
      made.what === 'gathers' && words.moreOf(percentText(made.gathered.ratio - 1, bench)),
    ],
    [words.left, made.what === 'seam' && degrees(made.seamed.angle)],
    [
      words.short,
      short !== undefined &&
        short >= 0 &&
        words.shortOf(byTape(short, bench), ...shortRange(bench)),
    ],
  ]);
}

function shortOf(full: ExactLength | undefined, middle: ExactLength): ExactLength | undefined {
  return full === undefined ? undefined : exactLength(full - middle);
}

function shortRange(bench: Bench): [least: string, most: string] {
  return [exactly(SHORT_OF.value, bench), exactly(CLUSTER_SHORT_OF.value, bench)];
}

function warnings({ asked, dart, made }: Darted, bench: Bench): string[] {
  const short = shortOf(asked.full, dart.middle);
  const sewn = made.what === 'moved' ? made.moved : dart;
  const cone = (angle: number) =>
    shownNumber((Math.asin(1 - angle / (2 * Math.PI)) * 180) / Math.PI, 1, bench.decimalMark);
  const kink = made.what === 'edge' ? made.edge.kink : 0;
  const out = exactLength(Math.abs(KINK_AT * Math.sin(kink / 2)));
  return onlySaid([
    sewn.width < TINY && made.what !== 'gathers' && words.tiny,
    (made.what === 'edge' || made.what === 'moved') &&
      sewn.angle > POINTED &&
      words.pointed(cone(sewn.angle)),
    short !== undefined && short < 0 && words.past,
    short !== undefined &&
      short >= 0 &&
      (short < SHORT_OF.value || short > CLUSTER_SHORT_OF.value) &&
      words.unlike(...shortRange(bench)),
    Math.abs(kink) > SMOOTH &&
      words.kink(
        angleText(Math.abs(kink), bench),
        kink < 0,
        exactly(out, bench),
        exactly(KINK_AT, bench),
      ),
    made.what === 'gathers' && made.gathered.ratio < EASED && words.easy,
  ]);
}
