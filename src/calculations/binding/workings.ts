import { bindingAnswerWords as words } from '#words/calculations/binding-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, ZERO } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { BAND_TURNS, CORD_PLUS, CORD_TIMES } from '../../sewing/sources/binding.ts';
import { BOUND } from '../../sewing/sources/seams.ts';
import { type BindingAsked, edgeOf } from './fields.ts';
import type { Worked } from './worked.ts';

const { formula } = words;

/** How a binding's strip was got, with its numbers in it. */
export function bindingWorkings(asked: BindingAsked, worked: Worked, bench: Bench): Working[] {
  const { cut, rule, thick } = worked.width;
  const show = (x: ExactLength) => exactly(x, bench);
  return [
    ruleWorking(asked, worked, bench),
    ...(thick > 0
      ? [{ formula: formula.more(show(rule), show(thick), show(cut)), source: words.folds }]
      : []),
    ...(asked.finish === 'cord'
      ? [{ formula: `${words.published(CORD_TIMES)} ${words.published(CORD_PLUS)}`, source: '' }]
      : []),
    ...lengthWorking(asked, worked, bench),
  ];
}

function ruleWorking(asked: BindingAsked, { width }: Worked, bench: Bench): Working {
  const show = (x: ExactLength) => exactly(x, bench);
  const { finish, thickness } = asked;
  const [wide, seam, cord] = [asked.width, asked.seam, asked.cord].map((one) => show(one ?? ZERO));
  const [rule, thick] = [show(width.rule), thickness === 0 ? '' : show(thickness)];
  const pi = shownNumber(Math.PI, 5, bench.decimalMark);
  switch (finish) {
    case 'single':
      return { formula: formula.times(4, wide ?? '', rule), source: words.practice };
    case 'double':
      return { formula: formula.times(6, wide ?? '', rule), source: words.practice };
    case 'band': {
      const said = formula.band(wide ?? '', show(BAND_TURNS.value), rule);
      return { formula: said, source: words.published(BAND_TURNS) };
    }
    case 'seam': {
      const said = formula.seam(seam ?? '', show(BOUND.value.wider), rule);
      return { formula: said, source: words.seamSource(BOUND) };
    }
    case 'cord': {
      const said = formula.cord(pi, cord ?? '', thick, seam ?? '', rule);
      return { formula: said, source: words.geometry };
    }
    case 'flat':
      return { formula: formula.flat(wide ?? '', seam ?? '', rule), source: words.practice };
  }
}

function lengthWorking(asked: BindingAsked, { long }: Worked, bench: Bench): Working[] {
  if (!long) return [];
  const show = (x: ExactLength) => exactly(x, bench);
  const { inside, join } = edgeOf(asked);
  const number = (value: number) => shownNumber(value, 5, bench.decimalMark);
  const angles = inside === 0 ? [] : [...new Set(asked.corners)];
  const corners = angles.map((angle) => {
    const takes = long.corners[asked.corners.indexOf(angle)] ?? ZERO;
    const half = number(Math.min(angle, 360 - angle) / 2);
    return formula.corner(show(inside), half, show(takes));
  });
  const parts = [long.straight, long.curves, ...long.corners, long.ends].filter((one) => one > 0);
  return [
    {
      formula: [
        ...corners,
        ...(join === undefined
          ? []
          : [formula.join(number(Math.SQRT2), show(join), show(long.ends))]),
        formula.long(parts.map(show), show(long.long)),
      ].join(' '),
      source: words.lengths,
    },
  ];
}
