import { elasticWords as words } from '#words/calculations/elastic-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { percentText } from '../../calculation/tape-said.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { WAIST_LESS } from '../../sewing/sources/elastic.ts';
import type { Worked } from './worked.ts';

const { formula } = words;

/** How elastic and casing were got, with their numbers in it. */
export function elasticWorkings(worked: Worked, bench: Bench): Working[] {
  const { input, asked, casing } = worked;
  const show = (x: ExactLength) => exactly(x, bench);
  const terms = [asked.turn, asked.header, asked.width, asked.ease, asked.edge].filter(
    (x) => x > 0,
  );
  return [
    {
      formula: lengthOf(worked, show, bench) + stretches(worked, show, bench),
      source: words.source[input.how.by],
    },
    {
      formula: formula.allowance(terms.map(show), show(casing.allowance)),
      source: words.casingSource,
    },
  ];
}

type Show = (x: ExactLength) => string;

function lengthOf({ input: { girth, how, lap }, plan }: Worked, show: Show, bench: Bench): string {
  const ring = show(plan.ring);
  const cut = formula.cut(ring, lap === 0 ? '' : show(lap), show(plan.cut));
  switch (how.by) {
    case 'sample':
      return formula.sample(show(girth), show(how.flat), show(how.worn), ring) + cut;
    case 'percent':
      return (
        formula.percent(show(girth), shownNumber(how.percent, 2, bench.decimalMark), ring) + cut
      );
    case 'rule':
      return formula.less(show(girth), show(WAIST_LESS.value[0]), ring) + cut;
    case 'there':
      return lap === 0 ? '' : formula.less(show(how.there), show(lap), ring);
  }
}

function stretches({ input, plan }: Worked, show: Show, bench: Bench): string {
  const { girth, pass, how } = input;
  const to = (round: ExactLength, part: number) =>
    formula.stretch(show(round), show(plan.ring), percentText(part, bench));
  const most = how.by === 'sample' ? how.most : undefined;
  return [
    to(girth, plan.worn),
    ...(pass === undefined || plan.passing === undefined || plan.passing <= 0
      ? []
      : [to(pass, plan.passing)]),
    ...(pass === undefined || how.by !== 'sample' || most === undefined || !plan.least
      ? []
      : [formula.least(show(pass), show(how.flat), show(most), show(plan.least))]),
  ].join('');
}
