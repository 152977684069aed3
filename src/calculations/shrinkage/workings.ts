import { shrinkageAnswerWords as words } from '#words/calculations/shrinkage-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { afterwards, cutFor, meanOf } from '../../sewing/cloth/shrinkage.ts';
import { READINGS, WASHES } from '../../sewing/sources/shrinkage.ts';
import type { ShrinkageAsked, Way } from './fields.ts';
import { differOf, type Kept, sampleOf } from './worked.ts';

const { formula } = words;

/** How what is lost, and what is cut, was got, with its numbers in it. */
export function shrinkageWorkings(asked: ShrinkageAsked, kept: Kept, bench: Bench): Working[] {
  const { across } = kept;
  const ways = [
    shareOf(asked, 'along', kept.along, bench),
    ...(across === undefined ? [] : [shareOf(asked, 'across', across, bench)]),
  ];
  const shares = across === undefined ? [] : [percent(kept.along, bench), percent(across, bench)];
  const area =
    across === undefined
      ? []
      : [formula.times(shares, percent(kept.along * across, bench)).trimStart()];
  return [
    { formula: ways.join(' '), source: words.published(READINGS) },
    ...area.map((one) => ({ formula: one, source: words.derived })),
    ...cutWorking(asked, kept, bench),
    { formula: words.published(WASHES), source: '' },
  ];
}

/** What is lost in per cent to a few places; of what grows less than nothing. */
function percent(kept: number, { decimalMark }: Bench): string {
  const lost = shownNumber(100 * (1 - kept), 4, decimalMark);
  return lost.replace('-', '−');
}

function shareOf(asked: ShrinkageAsked, way: Way, kept: number, bench: Bench): string {
  const { before, after, more } = sampleOf(asked, way);
  const show = (x: ExactLength) => exactly(x, bench);
  const mean = meanOf(after);
  const first = percent(mean / before, bench);
  return [
    after.length > 1 ? formula.mean(after.map(show), show(mean)) : '',
    formula.share(show(before), show(mean), first),
    more.length === 0
      ? ''
      : formula.times(
          [first, ...more.map((one) => percent(1 - one / 100, bench))],
          percent(kept, bench),
        ),
  ].join('');
}

function cutWorking(asked: ShrinkageAsked, kept: Kept, bench: Bench): Working[] {
  const { long, wide, growth, there, thereWide, other } = asked;
  const show = (x: ExactLength) => exactly(x, bench);
  const cut = (wanted: ExactLength | undefined, share: number | undefined) =>
    wanted === undefined || share === undefined || (growth === 'keep' && share >= 1)
      ? []
      : [formula.cut(show(wanted), percent(share, bench), show(cutFor(wanted, share, growth)))];
  const after = (one: ExactLength | undefined, share: number | undefined) =>
    one === undefined || share === undefined
      ? []
      : [formula.after(show(one), percent(share, bench), show(afterwards(one, share)))];
  const differs =
    long === undefined || other === undefined
      ? []
      : [
          formula.differs(
            show(long),
            percent(1 - other / 100, bench),
            percent(kept.along, bench),
            show(differOf(long, kept.along, other)),
          ),
        ];
  const all = [
    ...cut(long, kept.along),
    ...cut(wide, kept.across),
    ...after(there, kept.along),
    ...after(thereWide, kept.across),
    ...differs,
  ];
  return all.length === 0 ? [] : [{ formula: all.join(' '), source: words.derived }];
}
