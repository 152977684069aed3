import { threadAnswerWords as words } from '#words/calculations/thread-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { constantOf, slopeOf } from '../../sewing/seams/thread-ratio.ts';
import {
  CHAIN_RATIO,
  COTTON_TICKET,
  GUIDE,
  LOOPER,
  RATIOS,
  TICKET,
} from '../../sewing/sources/thread.ts';
import type { ThreadAsked } from './fields.ts';
import type { Worked } from './worked.ts';

const { formula } = words;

/** How the thread was got, with its numbers in it. */
export function threadWorkings(asked: ThreadAsked, worked: Worked, bench: Bench): Working[] {
  const { stitch, by, tex } = asked;
  return [
    ratioWorking(asked, worked, bench),
    ...(stitch === 'chain' && by !== 'sample'
      ? [{ formula: words.published(LOOPER), source: '' }]
      : []),
    ...allWorking(asked, worked, bench),
    ...spoolWorking(asked, worked, bench),
    ...handWorking(asked, worked, bench),
    ...(tex === undefined
      ? []
      : [TICKET, COTTON_TICKET].map((one) => ({ formula: words.published(one), source: '' }))),
  ];
}

function ratioWorking(asked: ThreadAsked, { thread }: Worked, bench: Bench): Working {
  const { stitch, by } = asked;
  const show = (x: ExactLength) => exactly(x, bench);
  const ratio = shownNumber(thread.ratio, 4, bench.decimalMark);
  if (by === 'sample') {
    const { sampleSeam, sampleNeedle } = needed({
      sampleSeam: asked.sampleSeam,
      sampleNeedle: asked.sampleNeedle,
    });
    const other = asked.sampleOther === undefined ? '' : show(asked.sampleOther);
    return {
      formula: formula.sample(show(sampleNeedle), other, show(sampleSeam), ratio),
      source: words.sampleSource,
    };
  }
  if (by !== 'formula') {
    const second = stitch === 'chain' ? CHAIN_RATIO : GUIDE;
    const source = words.published(by === 'table' ? RATIOS : second);
    return { formula: formula.tabled(ratio), source };
  }
  const { thickness, stitchLong } = needed({
    thickness: asked.thickness,
    stitchLong: asked.stitchLong,
  });
  const constant = constantOf(stitch);
  const [thick, long] = [show(thickness), show(stitchLong)];
  return constant
    ? {
        formula: formula.constant(constant.value, thick, long, ratio),
        source: words.published(constant),
      }
    : {
        formula: formula.zigzag(show(slopeOf(asked)), thick, long, ratio),
        source: words.zigzagSource,
      };
}

function allWorking(asked: ThreadAsked, { thread }: Worked, bench: Bench): Working[] {
  const { seams, passes, end, waste } = asked;
  if (seams.length === 0) return [];
  const show = (x: ExactLength) => exactly(x, bench);
  const number = (value: number) => shownNumber(value, 4, bench.decimalMark);
  const all = formula.all({
    ratio: number(thread.ratio),
    passes,
    seams: seams.map(show),
    ends: end === 0 ? '' : show(end),
    waste: waste === 0 ? '' : number(1 + waste / 100),
    all: show(thread.all),
  });
  return [{ formula: all, source: words.wasteSource }];
}

/** Where one thread takes them all: of several each is fed by itself. */
function spoolWorking(
  { spool, stitch }: ThreadAsked,
  { thread, spools }: Worked,
  bench: Bench,
): Working[] {
  const oneSpool = stitch === 'lock' || stitch === 'zigzag';
  if (!oneSpool || spool === undefined || spools === undefined) return [];
  const show = (x: ExactLength) => exactly(x, bench);
  const exact = shownNumber(thread.all / spool, 2, bench.decimalMark);
  return [
    {
      formula: formula.spools(show(thread.all), show(spool), exact, spools),
      source: words.spoolSource,
    },
  ];
}

function handWorking(
  { working, tail }: ThreadAsked,
  { thread, hand }: Worked,
  bench: Bench,
): Working[] {
  if (hand === undefined || working === undefined || tail === undefined) return [];
  const show = (x: ExactLength) => exactly(x, bench);
  const exact = shownNumber(thread.all / (working - tail), 2, bench.decimalMark);
  return [
    {
      formula: formula.hand(show(thread.all), show(working), show(tail), exact, hand),
      source: words.workingSource,
    },
  ];
}
