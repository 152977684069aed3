import { CALCULATION_NAMES } from './calculation-names.ts';

/** What is asked of shrinkage. */
export const shrinkageWords = {
  title: CALCULATION_NAMES.shrinkage,
  labels: {
    alongBefore: 'Marks apart, along',
    alongAfter: 'After wash or steam, along',
    acrossBefore: 'Marks apart, across',
    acrossAfter: 'After wash or steam, across',
    long: 'Wanted long, afterwards',
    wide: 'Wanted wide, afterwards',
    moreAlong: 'Then lost along, %',
    moreAcross: 'Then lost across, %',
    growth: 'What grows',
    there: 'What is there, long',
    thereWide: 'What is there, wide',
    other: 'Interfacing loses along, %',
  },
  growth: { keep: 'Cut as wanted', smaller: 'Cut smaller' },
  notMeasured: 'not measured',
  notGiven: 'not given',
  more: 'nothing more; each treatment after a ;',
};
