import { tucksWords as words } from '#words/calculations/tucks-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { percentText } from '../../calculation/tape-said.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { tuckedRoom, wantedSpacing } from '../../sewing/fullness/tuck-input.ts';
import type { Tucked } from './tucked.ts';

const { formula } = words;

/** How tucks were got, with their numbers in it. */
export function tucksWorkings(found: Tucked, bench: Bench): Working[] {
  const { input, plan, asked } = found;
  const show = (x: ExactLength) => exactly(x, bench);
  const { finished, first, last, depth, step, seam } = input;
  const room = formula.room(show(finished), show(first), show(last), show(tuckedRoom(input)));
  const taken =
    input.anew && input.spread.by === 'groups' && step > 0
      ? formula.takenAnew(
          input.spread.groups,
          input.spread.each,
          ...([show(depth), show(step), show(plan.taken)] as const),
        )
      : formula.taken(plan.count, show(depth), step === 0 ? '' : show(step), show(plan.taken));
  const cut = formula.cut(
    show(finished),
    show(plan.taken),
    seam === 0 ? '' : show(seam),
    show(plan.cut),
  );
  return [
    { formula: room + spread(found, bench) + taken + cut, source: words.source },
    ...(plan.between === undefined ? [] : [{ formula: '', source: words.groupSource }]),
    ...(asked.radius === undefined
      ? []
      : [
          {
            formula: formula.curve(
              show(depth),
              show(asked.radius),
              percentText((2 * depth) / asked.radius, bench),
            ),
            source: '',
          },
        ]),
  ];
}

/** How many, and how far apart. */
function spread({ input, plan }: Tucked, bench: Bench): string {
  const show = (x: ExactLength) => exactly(x, bench);
  const { spread, depth } = input;
  const room = tuckedRoom(input);
  const gaps = plan.count - 1;
  if (spread.by === 'groups') {
    const { groups, each, spacing } = spread;
    return formula.between(show(room), groups, each, show(spacing), show(plan.between ?? room));
  }
  if (gaps === 0 || plan.spacing === undefined) return '';
  const even = formula.each(show(room), gaps, show(plan.spacing));
  if (spread.by === 'count') return even;
  const wanted = wantedSpacing(spread, depth);
  const exact = shownNumber(room / wanted, 2, bench.decimalMark);
  const asked =
    spread.by === 'gap' ? formula.spacing(show(spread.gap), show(depth), show(wanted)) : '';
  return asked + formula.gaps(show(room), show(wanted), exact, gaps, plan.count) + even;
}
