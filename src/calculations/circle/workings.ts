import { circleWords as words } from '#words/calculations/circle-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { PARTS } from './fields.ts';
import type { Rounded } from './rounded.ts';

const { formula } = words;

/** How radii were got, with their numbers in it. */
export function circleWorkings(found: Rounded, bench: Bench): Working[] {
  const { asked, plan } = found;
  const show = (x: ExactLength) => exactly(x, bench);
  const radius = show(plan.piece.inner);
  const { seam, long, hem } = asked;
  return [
    {
      formula:
        radiusOf(found, bench) +
        formula.cut(radius, seam === 0 ? '' : show(seam), show(plan.cutRadius)) +
        formula.cutHem(radius, show(long), hem === 0 ? '' : show(hem), show(plan.cutHem)),
      source: words.source,
    },
  ];
}

function radiusOf({ asked, plan }: Rounded, bench: Bench): string {
  const show = (x: ExactLength) => exactly(x, bench);
  const number = (x: number, places = 4) => shownNumber(x, places, bench.decimalMark);
  const [edge, radius, pi] = [show(asked.edge), show(plan.piece.inner), number(Math.PI)];
  const { what, part, long } = asked;
  if (what === 'skirt') {
    const text = part === 'other' ? number(asked.circles ?? 1) : PARTS[part].text;
    return formula.skirt(edge, pi, text, radius);
  }
  if (what === 'gores') {
    return formula.gores(edge, show(long), show(needed({ sweep: asked.sweep }).sweep), radius);
  }
  const { times, side } = asked;
  const wanted = exactLength(times === undefined ? (asked.radius ?? 0) : long / (times - 1));
  const none = side === 0 ? '' : show(side);
  const exact = asked.edge / (2 * Math.PI * wanted - 2 * side);
  return [
    times === undefined ? '' : formula.asked(show(long), number(times), show(wanted)),
    formula.rings(edge, pi, show(wanted), none, number(exact, 2), plan.pieces),
    formula.ring(edge, plan.pieces, none, pi, radius),
  ].join('');
}
