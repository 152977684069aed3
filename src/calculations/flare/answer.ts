import { flareWords as words } from '#words/calculations/flare-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, Working } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { said } from '../../calculation/tape-said.ts';
import { exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { FlareAsked } from './fields.ts';
import { flareFigure } from './figure.ts';
import type { Flared } from './flared.ts';

const { formula } = words;

/** Flare as an answer. */
export function flareAnswer(asked: FlareAsked, found: Flared, bench: Bench): Answer {
  const hem = numberOnTape(found.plan.hem, bench);
  return {
    headline: {
      before: hem.rounded ? words.about : '',
      number: hem,
      after: words.after[found.what],
    },
    sentence: sentence(asked, found, bench),
    lines: lines(asked, found, bench),
    offers: [],
    warnings: [],
    cautions: onlySaid([
      words.before,
      found.what === 'godet' && words.stay,
      found.what === 'godet' && cautionWords.shears,
      words.hangs,
    ]),
    runs: [],
    figures: [{ name: words.figure, draw: () => flareFigure(asked, found) }],
    workings: workings(asked, found, bench),
  };
}

function sentence(asked: FlareAsked, found: Flared, bench: Bench): string {
  const show = (x: ExactLength) => exactly(x, bench);
  switch (found.what) {
    case 'slash':
      return words.sentence.slash(said(found.plan.spread, bench));
    case 'godet':
      return words.sentence.godet(show(found.plan.added), said(asked.edge ?? ZERO, bench));
    case 'length':
      return words.sentence.length(show(asked.sweep), show(found.plan.jog));
  }
}

function lines({ sweep }: FlareAsked, found: Flared, bench: Bench): Line[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { what, plan } = found;
  const degrees = (angle: number) =>
    words.degrees(shownNumber((angle * 180) / Math.PI, 1, bench.decimalMark));
  const up = (x: ExactLength) => onTape(x, bench, upToGraduation);
  const more = exactLength(plan.hem - sweep);
  return linesSaid([
    [words.more, more > 0 && show(more)],
    [words.angle, what !== 'length' && degrees(plan.angle)],
    [words.chord, what === 'godet' && show(plan.chord)],
    [words.size, what === 'godet' && words.sizeOf(up(plan.long), up(plan.wide))],
    [words.long, what === 'length' && show(plan.long)],
    [words.jog, what === 'length' && show(plan.jog)],
  ]);
}

function workings(asked: FlareAsked, found: Flared, bench: Bench): Working[] {
  const { sweep, slashes = 1, godets = 1, wanted } = asked;
  const show = (x: ExactLength | undefined) => exactly(x ?? ZERO, bench);
  const { what, plan } = found;
  const all = [
    what === 'slash' && asked.by === 'wanted'
      ? formula.spread(show(wanted), show(sweep), slashes, show(plan.spread))
      : '',
    what === 'slash' ? formula.hem(show(sweep), slashes, show(plan.spread), show(plan.hem)) : '',
    what === 'godet' && asked.opens === 'angle'
      ? formula.added(
          shownNumber(Math.PI, 4, bench.decimalMark),
          show(asked.edge),
          shownNumber(asked.angle ?? 0, 6, bench.decimalMark),
          show(plan.added),
        )
      : '',
    what === 'godet' ? formula.hem(show(sweep), godets, show(plan.added), show(plan.hem)) : '',
  ];
  return [
    {
      formula: all.join('') + (what === 'length' ? changed(asked, plan, bench) : ''),
      source: words.source,
    },
  ];
}

function changed(
  { sweep, upper, long, way, change }: FlareAsked,
  plan: Extract<Flared, { what: 'length' }>['plan'],
  bench: Bench,
): string {
  const show = (x: ExactLength | undefined) => exactly(x ?? ZERO, bench);
  const sign = way === 'longer' ? '+' : '−';
  return (
    formula.long(show(long), sign, show(change), show(plan.long)) +
    formula.sweep(show(sweep), show(upper), show(long), show(change), sign, show(plan.hem))
  );
}
