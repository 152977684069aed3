import { openingAnswerWords as words } from '#words/calculations/opening-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, Working } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { numberSaid, percentText } from '../../calculation/tape-said.ts';
import { bound, byTape, exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { HEADS_THAT_PASS } from '../../sewing/sources/people.ts';
import { opensTo, type Pass } from '../../sewing/wearer/pass-over.ts';
import type { OpeningAsked } from './fields.ts';

/** An edge against what has to pass it: that it doesn't, before all else. */
export function openingAnswer(read: OpeningAsked, pass: Pass, bench: Bench): Answer {
  return {
    headline: headline(read, pass, bench),
    sentence: sentence(read, pass, bench),
    lines: lines(read, pass, bench),
    offers: [],
    warnings: warnings(read, pass, bench),
    cautions: read.way === 'slit' && pass.least > 0 ? [words.tryOn, words.stop] : [words.tryOn],
    runs: [],
    workings: workings(read, pass, bench),
  };
}

/** How much opening is lacking; less than nothing is more than needed. */
function lacking({ slit }: OpeningAsked, { least }: Pass): ExactLength | undefined {
  return slit === undefined ? undefined : exactLength(least - slit);
}

function headline(read: OpeningAsked, pass: Pass, bench: Bench): Answer['headline'] {
  const lacks = lacking(read, pass);
  const { edge, slit } = read;
  if (lacks !== undefined && lacks > 0) {
    return { number: numberSaid(lacks, bench), after: words.longer };
  }
  if (pass.by === 'closed') {
    const spare = numberSaid(exactLength(edge - pass.needs), bench);
    return { before: words.passesClosed, number: spare, after: words.toSpare };
  }
  if (slit !== undefined) {
    const number = numberOnTape(opensTo(edge, slit), bench);
    return { before: words.passesOpen, number, after: words.round };
  }
  return { number: numberOnTape(pass.least, bench, upToGraduation), after: words.atLeast };
}

function sentence(read: OpeningAsked, pass: Pass, bench: Bench): string {
  const least = onTape(pass.least, bench, upToGraduation);
  const lacks = lacking(read, pass);
  if (lacks !== undefined && lacks > 0) return words.lacks(least);
  if (pass.by === 'closed') return words.unneeded;
  if (lacks !== undefined) return words.enough(least);
  if (pass.by === 'width') return words.width(byTape(pass.needs, bench));
  return words.edges(byTape(opensTo(read.edge, pass.least), bench));
}

function lines(read: OpeningAsked, { needs, least, by }: Pass, bench: Bench): Line[] {
  const { edge, slit } = read;
  const stretch = edge > 0 ? percentText((needs - edge) / edge, bench) : undefined;
  const found: [string, string | false | undefined][] = [
    [words.needsLine, byTape(needs, bench)],
    [words.leastLine, slit !== undefined && bound(least, 'least', bench)],
    [words.opensLine, by !== 'closed' && byTape(opensTo(edge, slit ?? least), bench)],
    [
      words.edgeLine,
      stretch !== undefined && needs > edge && words.edgeWider(byTape(needs, bench), stretch),
    ],
  ];
  return linesSaid(found);
}

function warnings(read: OpeningAsked, pass: Pass, bench: Bench): string[] {
  const { edge, passes, slit } = read;
  const opened = slit ?? pass.least;
  const said: (string | false)[] = [
    slit === undefined &&
      pass.needs > edge &&
      words.doesNotPass(byTape(exactLength(pass.needs - edge), bench)),
    edge > 0 && opened > edge / 2 && words.deep,
    passes === 'hand' && words.thumb,
  ];
  return onlySaid(said);
}

function workings(read: OpeningAsked, pass: Pass, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { edge, body, ease, slit, passes, below, down } = read;
  const { needs, least, by } = pass;
  const isHead = passes === 'head';
  const opened = slit ?? least;
  const found: (Working | false | undefined)[] = [
    { formula: words.needsFormula(show(body), show(ease), show(needs)), source: words.practice },
    by === 'edges' && {
      formula: words.slitFormula(show(needs), show(edge), show(least)),
      source: words.derived,
    },
    by === 'width' &&
      below !== undefined &&
      down !== undefined && {
        formula: words.widthFormula(show(down), show(needs), show(edge), show(below), show(least)),
        source: words.derived,
      },
    by !== 'closed' && {
      formula: words.opensFormula(show(edge), show(opened), show(opensTo(edge, opened))),
      source: words.derived,
    },
    isHead && {
      formula: words.says(HEADS_THAT_PASS.quote),
      source: words.source(HEADS_THAT_PASS.quote),
    },
  ];
  return onlySaid(found);
}
