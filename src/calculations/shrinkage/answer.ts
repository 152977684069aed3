import { shrinkageAnswerWords as words } from '#words/calculations/shrinkage-answer-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { byTape, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation, upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { afterwards, cutFor, readingDoubt } from '../../sewing/cloth/shrinkage.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { ShrinkageAsked, Way } from './fields.ts';
import { differOf, type Kept, sampleOf } from './worked.ts';
import { shrinkageWorkings } from './workings.ts';

/** Lost or grown more than this is doubted: common practice, no source. */
const MUCH = 0.3;
/** Nothing is lost but for the noise of dividing. */
const NOTHING = 1e-9;

/** Shrinkage as an answer: what is cut, or how much is lost. */
export function shrinkageAnswer(asked: ShrinkageAsked, kept: Kept, bench: Bench): Answer {
  const across = kept.across === undefined ? '' : changes(kept.across, bench);
  return {
    headline: headline(asked, kept, bench),
    sentence: words.sentence(changes(kept.along, bench), across),
    lines: lines(asked, kept, bench),
    offers: [],
    warnings: warnings(asked, kept, bench),
    cautions: [words.sample, turned.iron(IRON_ONE_DOT.value), cautionWords.shears],
    runs: [],
    workings: shrinkageWorkings(asked, kept, bench),
  };
}

function headline({ long, wide, growth }: ShrinkageAsked, kept: Kept, bench: Bench) {
  const cut = (wanted: ExactLength, share: number) =>
    numberOnTape(cutFor(wanted, share, growth), bench, upToGraduation);
  if (long !== undefined) return { number: cut(long, kept.along), after: words.long };
  if (wide !== undefined && kept.across !== undefined) {
    return { number: cut(wide, kept.across), after: words.wide };
  }
  const after = kept.along > 1 ? words.grown : words.lost;
  return { number: `${share(kept.along, bench)} %`, after };
}

/** What is lost or grown, in per cent to a hundredth, without its sign. */
function share(kept: number, bench: Bench): string {
  return shownNumber(100 * Math.abs(1 - kept), 2, bench.decimalMark);
}

function changes(kept: number, bench: Bench): string {
  if (Math.abs(1 - kept) < NOTHING) return words.stays;
  return kept > 1 ? words.grows(share(kept, bench)) : words.shrinks(share(kept, bench));
}

function lines(asked: ShrinkageAsked, kept: Kept, bench: Bench): Line[] {
  const { long, wide, growth, there, thereWide } = asked;
  const { across } = kept;
  const after = (one: ExactLength | undefined, share: number | undefined) =>
    one === undefined || share === undefined
      ? undefined
      : onTape(afterwards(one, share), bench, downToGraduation);
  const cutWide =
    long === undefined || wide === undefined || across === undefined
      ? undefined
      : onTape(cutFor(wide, across, growth), bench, upToGraduation);
  const found: [string, string | undefined][] = [
    [words.wideLine, cutWide],
    [words.shrinksLine.along, doubted(asked, 'along', kept.along, bench)],
    [
      words.shrinksLine.across,
      across === undefined ? undefined : doubted(asked, 'across', across, bench),
    ],
    [words.area, across === undefined ? undefined : changes(kept.along * across, bench)],
    [words.after.along, after(there, kept.along)],
    [words.after.across, after(thereWide, across)],
    [words.differs, differs(asked, kept, bench)],
  ];
  return found.flatMap(([label, value]) => (value === undefined ? [] : [{ label, value }]));
}

/** With how far its readings may be off. */
function doubted(asked: ShrinkageAsked, way: Way, kept: number, bench: Bench): string {
  const doubt = readingDoubt(sampleOf(asked, way).before, tapeStep(bench));
  return words.doubted(changes(kept, bench), shownNumber(100 * doubt, 2, bench.decimalMark));
}

function differs({ long, other }: ShrinkageAsked, kept: Kept, bench: Bench): string | undefined {
  if (long === undefined || other === undefined) return undefined;
  const by = differOf(long, kept.along, other);
  const size = exactLength(Math.abs(by));
  return words.differsOf(size < 1 ? '' : byTape(size, bench), by < 0);
}

function warnings(asked: ShrinkageAsked, kept: Kept, bench: Bench): string[] {
  const ways = (['along', 'across'] as const).flatMap((way) => {
    const share = kept[way];
    return share === undefined ? [] : [{ way, share }];
  });
  const said = ways.flatMap(({ way, share }) => {
    const { before } = sampleOf(asked, way);
    const off = Math.abs(1 - share);
    return [
      ...(share > 1 + NOTHING ? [words.growsWarning(way, asked.growth === 'smaller')] : []),
      ...(off > MUCH ? [words.much(way)] : []),
      ...(off > NOTHING && off < readingDoubt(before, tapeStep(bench)) ? [words.unsure(way)] : []),
    ];
  });
  const few = ways.map(({ way }) => way).filter((way) => sampleOf(asked, way).after.length === 1);
  return [...said, ...(few.length > 0 ? [words.oneReading(few)] : [])];
}
