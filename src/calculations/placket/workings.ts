import { placketWords as words } from '#words/calculations/placket-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { onlySaid } from '../../calculation/only-said.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { surely } from '../../sewing/bands/zip.ts';
import { SIDE_SPLIT } from '../../sewing/sources/plackets.ts';
import { aboveWaist, type Worked } from './worked.ts';

const { formula } = words;

/** How opening, strips and zip were got, with their numbers in it. */
export function placketWorkings(worked: Worked, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { asked, open } = worked;
  const { by, body, edge, ease = ZERO } = asked;
  return onlySaid<Working>([
    by === 'passes' &&
      body !== undefined &&
      edge !== undefined && {
        formula: formula.open(show(body), show(ease), show(edge), show(open)),
        source: words.geometry,
      },
    ...stripWorkings(worked, show),
    zipWorking(worked, show),
    asked.split === 'waist' && {
      formula: formula.split(
        show(open),
        SIDE_SPLIT.value.of,
        show(aboveWaist(open, SIDE_SPLIT.value.above, SIDE_SPLIT.value.of)),
      ),
      source: words.splitSource,
    },
  ]);
}

type Show = (x: ExactLength) => string;

function stripWorkings({ asked, open, strips }: Worked, show: Show): (Working | false)[] {
  const { way, width = ZERO, seam = ZERO, extra = ZERO } = asked;
  if (!strips) return [];
  return [
    {
      formula:
        formula.long(way === 'lap' ? 2 : 1, show(open), show(extra), show(strips.long)) +
        formula.wide(show(width), show(seam), show(strips.wide)) +
        (strips.facing === undefined
          ? ''
          : formula.facing(show(width), show(seam), show(strips.facing))),
      source: words.stripSource[way === 'lap' ? 'lap' : 'strips'],
    },
  ];
}

function zipWorking({ open, zip }: Worked, show: Show): Working | false {
  if (!zip) return false;
  const left = formula.left(show(zip.long), show(open), show(zip.left));
  const cut =
    zip.shorten === undefined
      ? ''
      : formula.cut(
          show(zip.shorten.stop),
          show(exactLength(zip.shorten.cut - zip.shorten.stop)),
          show(zip.shorten.cut),
        );
  const sure = zip.pair ? formula.pair(zip.pair.inches, zip.pair.cm, show(surely(zip.pair))) : '';
  return { formula: sure + left + cut, source: words.zipSource };
}
