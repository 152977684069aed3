import { fitAnswerWords as words } from '#words/calculations/fit-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { numberSaid, said } from '../../calculation/tape-said.ts';
import { byTape, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { publishedEase } from '../../sewing/wearer/ease.ts';
import { clearance } from '../../sewing/wearer/fit.ts';
import type { FitAsked } from './fields.ts';
import type { Fit } from './worked.ts';
import { fitWorkings } from './workings.ts';

/** A fit as an answer: what is worst about it first. */
export function fitAnswer(read: FitAsked, fit: Fit, bench: Bench): Answer {
  return {
    headline: headline(read, fit, bench),
    sentence: sentence(read, fit, bench),
    lines: lines(read, fit, bench),
    offers: [],
    warnings: warnings(read, fit, bench),
    cautions: fit.there ? [words.tryOn] : [],
    runs: [],
    workings: fitWorkings(read, fit, bench),
  };
}

const size = (x: ExactLength) => exactLength(Math.abs(x));

function headline({ cloth }: FitAsked, fit: Fit, bench: Bench): Answer['headline'] {
  const { there, wanted, verdict } = fit;
  if (!there) return { number: numberOnTape(wanted, bench), after: words.wanted[verdict] };
  if (there.ease < 0 && cloth === 'woven') {
    return { number: numberSaid(size(there.ease), bench), after: words.smaller };
  }
  if (there.lacks > 0) return { number: numberSaid(there.lacks, bench), after: words.lacking };
  return { number: numberSaid(there.ease, bench), after: words.easeThere };
}

function sentence({ body, seams }: FitAsked, { wanted, there }: Fit, bench: Bench): string {
  if (!there) return words.share(onTape(body, bench));
  const gives = words.gives(byTape(there.girth, bench), byTape(wanted, bench));
  const { lacks, eachEdge } = there;
  if (lacks <= 0 || eachEdge === undefined || seams === undefined) return gives;
  return `${gives} ${words.letOut(said(eachEdge, bench), seams)}`;
}

function lines(read: FitAsked, { wanted, there }: Fit, bench: Bench): Line[] {
  const show = (x: ExactLength) => byTape(size(x), bench);
  const either = (x: ExactLength, more: (by: string) => string, less: (by: string) => string) =>
    x < 0 ? less(show(x)) : more(show(x));
  const ease = there?.ease ?? read.ease;
  const found: [string, string | false | undefined][] = [
    [words.girthLine, there && byTape(there.girth, bench)],
    [words.wantedLine, there && byTape(wanted, bench)],
    [words.easeLine, there && easeSaid(there.ease, show)],
    [
      words.lacksLine,
      there && (there.lacks === 0 ? words.same : either(there.lacks, words.lacks, words.over)),
    ],
    [words.edgeLine, there?.eachEdge && either(there.eachEdge, words.out, words.in)],
    [words.dartLine, there?.eachDart && either(there.eachDart, words.less, words.more)],
    [
      words.changeLine,
      there && there.change !== 0 && either(there.change, words.wider, words.narrower),
    ],
    [words.publishedLine, rangesOf(read, bench)],
    [words.offLine, ease > 0 && words.off(said(clearance(ease), bench))],
  ];
  return linesSaid(found);
}

function easeSaid(ease: ExactLength, show: (x: ExactLength) => string): string {
  return ease < 0 ? words.lessThanBody(show(ease)) : show(ease);
}

/** What is published for the place, each source by itself: they differ. */
function rangesOf({ of, cloth }: FitAsked, bench: Bench): string {
  if (cloth === 'stretch') return words.littleOrNone;
  const show = (x: ExactLength) => onTape(x, bench, upToGraduation);
  const ranges = publishedEase(of).map(({ least, most }) =>
    most === undefined ? words.least(show(least)) : words.range(show(least), onTape(most, bench)),
  );
  return ranges.length === 0 ? words.noneFound : words.or([...new Set(ranges)]);
}

function warnings(read: FitAsked, { verdict, there }: Fit, bench: Bench): string[] {
  const ease = there?.ease ?? read.ease;
  const show = (x: ExactLength) => byTape(size(x), bench);
  const leasts = publishedEase(read.of).map(({ least }) => least);
  const said: (string | false | undefined)[] = [
    verdict === 'none' && words.tooSmall(show(ease)),
    read.cloth === 'stretch' && ease < 0 && words.stretchUnder(show(ease)),
    verdict === 'under' &&
      words.under(show(ease), onTape(exactLength(Math.min(...leasts)), bench, upToGraduation)),
    verdict === 'disputed' && words.disputed(show(ease), rangesOf(read, bench)),
  ];
  return onlySaid(said);
}
