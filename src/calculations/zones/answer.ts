import { zonesWords as words } from '#words/calculations/zones-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, Working } from '../../calculation/calculation.ts';
import { exactly, numberOnTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { GatherZones } from '../../sewing/fullness/gather-zones.ts';
import type { ZonesAsked } from './fields.ts';
import { zonesFigure } from './figure.ts';

/** Under this a zone is eased in rather than gathered: common practice, no source. */
const EASED = 1.2;

/** Gathers in zones, as an answer. */
export function zonesAnswer(asked: ZonesAsked, plan: GatherZones, bench: Bench): Answer {
  const cut = numberOnTape(plan.cut, bench, upToGraduation);
  const eased = plan.ratios.some((ratio) => ratio > 1 && ratio < EASED);
  return {
    headline: { before: cut.rounded ? words.about : '', number: cut, after: words.after },
    sentence: words.sentence,
    lines: lines(asked, plan, bench),
    offers: [],
    warnings: [
      ...(plan.ratios.every((ratio) => ratio === 1) ? [words.nothing] : []),
      ...(eased ? [words.ease] : []),
    ],
    cautions: [words.measure, cautionWords.pins],
    listsLast: true,
    runs: [
      { name: words.stripMarks, item: words.mark, run: plan.marks.strip },
      { name: words.edgeMarks, item: words.mark, run: plan.marks.edge },
    ].filter(({ run }) => run.marks.length > 0),
    figures: [{ name: words.figure, draw: () => zonesFigure(asked, plan) }],
    workings: workings(asked, plan, bench),
  };
}

function lines({ zones }: ZonesAsked, { edge, ratios, takes }: GatherZones, bench: Bench): Line[] {
  return [
    ...zones.map((zone, i) => ({
      label: words.zone(i + 1, exactly(zone, bench)),
      value: words.takes(
        exactly(takes[i] ?? zone, bench),
        shownNumber(ratios[i] ?? 1, 2, bench.decimalMark),
      ),
    })),
    { label: words.edge, value: exactly(edge, bench) },
  ];
}

function workings(asked: ZonesAsked, plan: GatherZones, bench: Bench): Working[] {
  const { zones, ratios, ends, by } = asked;
  const show = (x: ExactLength) => exactly(x, bench);
  const number = (x: number) => shownNumber(x, 4, bench.decimalMark);
  const without = ends === 0 ? '' : show(ends);
  if (by === 'ratio') {
    const terms = zones.map((zone, i) =>
      ratios[i] === 1 ? show(zone) : words.formula.term(number(ratios[i] ?? 1), show(zone)),
    );
    return [{ formula: words.formula.sum(terms, without, show(plan.cut)), source: words.source }];
  }
  const gathered = zones.flatMap((zone, i) =>
    ratios[i] === 1 ? [] : [{ zone, ratio: ratios[i] ?? 1, full: plan.ratios[i] ?? 1 }],
  );
  const flat = exactLength(zones.reduce((sum, zone, i) => (ratios[i] === 1 ? sum + zone : sum), 0));
  const terms = gathered.map(({ zone, ratio }) => words.formula.term(number(ratio), show(zone)));
  const first = gathered[0];
  if (!first) return [];
  const formula = words.formula.scaled(
    number(first.ratio),
    show(plan.cut),
    without,
    flat === 0 ? '' : show(flat),
    terms,
    number(first.full),
  );
  return [{ formula, source: words.sourceStrip }];
}
