import { collarWords as words } from '#words/calculations/collar-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { Collar } from '../../sewing/bands/collar.ts';
import type { CollarAsked } from './fields.ts';

const { formula } = words;

/** How a collar was got, with its numbers. */
export function collarWorkings(asked: CollarAsked, plan: Collar, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { front, back, past, deep, seam, under } = asked;
  const seamText = seam === 0 ? '' : show(seam);
  const ends = [past, seam].filter((x) => x > 0).map(show);
  const [more, less] =
    under === 0 ? ['', ''] : [formula.more(show(under)), formula.less(show(under))];
  const wider = [deep, plan.turn, under].filter((x) => x > 0).map(show);
  const all = [
    formula.neck(show(front), show(back), show(plan.neck)),
    turn(asked, plan, bench),
    formula.long(show(plan.neck), ends, more, show(plan.upper.long)),
    formula.wide(wider, seamText, show(plan.upper.wide)),
    formula.long(show(plan.neck), ends, less, show(plan.under.long)),
    formula.underWide(show(deep), under === 0 ? '' : show(under), seamText, show(plan.under.wide)),
    radius(asked, plan, bench),
  ];
  return [{ formula: all.join(''), source: words.source }];
}

function turn(asked: CollarAsked, plan: Collar, bench: Bench): string {
  if (plan.turn === 0) return '';
  const show = (x: ExactLength) => exactly(x, bench);
  const { upperThick, between, underThick, rolled } = asked;
  const half = (x: ExactLength | undefined) => (x === undefined ? [] : [formula.half(show(x))]);
  const terms = [
    ...half(underThick),
    ...(between === undefined ? [] : [show(between)]),
    ...half(upperThick),
  ];
  const part = rolled === 180 ? '' : formula.part(shownNumber(rolled, 6, bench.decimalMark));
  return formula.turn(terms, part, shownNumber(Math.PI, 4, bench.decimalMark), show(plan.turn));
}

function radius({ outer, deep }: CollarAsked, { curve, neck }: Collar, bench: Bench): string {
  if (!curve || outer === undefined) return '';
  const show = (x: ExactLength) => exactly(x, bench);
  const [inner, longer] = curve.inside === 'neck' ? [neck, outer] : [outer, neck];
  return formula.radius(show(inner), show(deep), show(longer), show(curve.sector.inner));
}
