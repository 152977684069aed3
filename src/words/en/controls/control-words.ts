import type { BenchUnit } from '../../../lengths/unit.ts';
import { UNIT_NAMES } from '../common/unit-names.ts';

export const fieldWords = {
  bareUnit: (unit: BenchUnit) => `in ${UNIT_NAMES[unit]} unless another unit is written`,
};

export const viewWords = {
  answer: 'Answer',
  actions: 'Actions',
  leave: 'Back',
  follow: 'Follow',
  count: 'Count',
  keep: 'Keep',
  tape: 'Photo',
  padDown: 'No keys',
  padUp: 'Keys',
};
