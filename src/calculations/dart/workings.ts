import { dartWords as words } from '#words/calculations/dart-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { Darted } from './darted.ts';

const { formula } = words;
const DEGREES = 180 / Math.PI;

/** An angle in degrees, always to a hundredth: it is hardly ever whole. */
export function angleText(radians: number, bench: Bench): string {
  return (radians * DEGREES).toFixed(2).replace('.', bench.decimalMark);
}

/** How a dart was got, with its numbers. */
export function dartWorkings(found: Darted, bench: Bench): Working[] {
  const { asked, made } = found;
  const steps = made.what === 'two' ? twoLegs(found, bench) : wedge(found, bench);
  return [
    { formula: steps + rest(found, bench), source: words.source },
    ...(asked.full === undefined ? [] : [{ formula: '', source: words.shortSource }]),
  ];
}

function twoLegs({ asked, made }: Darted, bench: Bench): string {
  if (made.what !== 'two') return '';
  const show = (x: ExactLength) => exactly(x, bench);
  const { width, above, below } = needed({
    ...{ width: asked.width, above: asked.above, below: asked.below },
  });
  const half = show(exactLength(width / 2));
  return (
    formula.squared(show(above), half, show(made.legs.above)) +
    formula.squared(show(below), half, show(made.legs.below))
  );
}

function wedge({ asked, dart }: Darted, bench: Bench): string {
  const show = (x: ExactLength) => exactly(x, bench);
  const { leg } = needed({ leg: asked.leg });
  if (asked.by === 'angle') {
    return formula.width(show(leg), angleText(dart.angle / 2, bench), show(dart.width));
  }
  const sine = shownNumber(dart.width / (2 * leg), 4, bench.decimalMark);
  return formula.sine(show(dart.width), show(leg), sine, angleText(dart.angle, bench));
}

function rest({ asked, dart, made }: Darted, bench: Bench): string {
  const show = (x: ExactLength) => exactly(x, bench);
  const angle = (x: number) => angleText(x, bench);
  const percent = (x: number) => shownNumber(x, 6, bench.decimalMark);
  switch (made.what) {
    case 'edge': {
      const { leg, slant } = needed({ leg: asked.leg, slant: asked.slant });
      const { cutLeg, cutTip } = made.edge;
      const near = percent(slant);
      const both = angle(slant / DEGREES + dart.angle / 2);
      return (
        formula.point(show(leg), angle(dart.angle / 2), show(dart.middle)) +
        (asked.seam > 0 ? formula.leg(show(leg), show(asked.seam), near, show(cutLeg)) : '') +
        formula.tip(show(cutLeg), near, both, show(cutTip))
      );
    }
    case 'two':
      return '';
    case 'moved': {
      const { reach, parts } = needed({ reach: asked.reach, parts: asked.parts });
      const { angle: each, width } = made.moved;
      const split = parts === 1 ? '' : formula.split(angle(dart.angle), parts, angle(each));
      return split + formula.width(show(reach), angle(each / 2), show(width));
    }
    case 'gathers': {
      const { strip, ratio } = made.gathered;
      const times = shownNumber(ratio, 2, bench.decimalMark);
      return formula.strip(
        show(needed({ zone: asked.zone }).zone),
        show(dart.width),
        show(strip),
        times,
      );
    }
    case 'seam': {
      const { leg, part } = needed({ leg: asked.leg, part: asked.part });
      const taken = angle(dart.angle - made.seamed.angle);
      return (
        formula.part(angle(dart.angle), percent(part), taken) +
        formula.less(angle(dart.angle), taken, angle(made.seamed.angle)) +
        formula.width(show(leg), angle(made.seamed.angle / 2), show(made.seamed.kept))
      );
    }
  }
}
