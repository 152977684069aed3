import { pocketWords as words } from '#words/calculations/pocket-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { onlySaid } from '../../calculation/only-said.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { SLASH_FACING, TO_CENTRE } from '../../sewing/sources/pockets.ts';
import type { Worked } from './worked.ts';

const { formula } = words;
type Show = (x: ExactLength) => string;

/** How place and cut were got, with their numbers in it. */
export function pocketWorkings(worked: Worked, bench: Bench): Working[] {
  const show: Show = (x) => exactly(x, bench);
  const { asked, hand, end } = worked;
  return onlySaid<Working>([
    ...placeWorkings(worked, show),
    asked.kind === 'seam' && {
      formula: formula.ends(show(asked.down), show(asked.width), show(end)),
      source: words.seamSource,
    },
    cutWorking(worked, show),
    hand !== undefined &&
      asked.hand !== undefined && {
        formula: formula.hand(show(asked.hand), show(asked.ease ?? ZERO), show(hand)),
        source: words.handSource,
      },
  ]);
}

function placeWorkings({ asked, at }: Worked, show: Show): (Working | false)[] {
  const { front, place, width, slant = ZERO } = asked;
  if (!at || front === undefined) return [];
  const across = exactLength(at.far - at.near);
  const { parts, of } = TO_CENTRE.value;
  const shared =
    place === 'middle'
      ? formula.middle(show(front), show(across), show(at.near))
      : formula.thirds(show(front), show(across), of, parts, show(at.near));
  return [
    slant > 0 && {
      formula: formula.slant(show(across), show(slant), show(width)),
      source: words.geometry,
    },
    place !== 'given' && {
      formula: shared,
      source: place === 'middle' ? words.geometry : words.placeSource,
    },
    { formula: formula.far(show(at.near), show(across), show(at.far)), source: words.mirror },
  ];
}

function cutWorking({ asked, cut }: Worked, show: Show): Working | false {
  const { kind, width, deep, hem = ZERO, seam } = asked;
  if (!cut) return false;
  if (kind === 'slash') {
    const long = formula.facing(show(width), show(SLASH_FACING.value.beyond), show(cut.deep));
    return { formula: long, source: words.slashSource };
  }
  return (
    deep !== undefined &&
    seam !== undefined && {
      formula:
        formula.wide(show(width), show(seam), show(cut.wide)) +
        formula.deep(show(deep), show(hem), show(seam), show(cut.deep)),
      source: words.patchSource,
    }
  );
}
