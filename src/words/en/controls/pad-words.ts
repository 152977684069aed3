import { UNIT_NAMES } from '../common/unit-names.ts';

/** What the number pad's keys are called. */
export const padWords = {
  pad: 'Number pad',
  point: 'decimal mark',
  separator: 'next one in the list',
  erase: 'erase',
  clear: 'clear the field',
  clearFace: 'Clear',
  plus: 'plus',
  minus: 'minus',
  times: 'times',
  over: 'divided by',
  stroke: 'fraction stroke',
  bracket: 'brackets',
  halve: '÷ 2: halve it',
  double: '× 2: double it',
  next: 'next field',
  nextFace: 'Next',
  fraction: (fraction: string) => `and ${fraction}`,
  unit: (unit: string) => `${unit}: in ${UNIT_NAMES[unit] ?? unit}`,
  switchFace: (unit: string) => `to ${unit}`,
  switchTo: (unit: string) => `to ${unit}: type in ${UNIT_NAMES[unit] ?? unit}`,
  less: (step: string) => `less by ${step}`,
  more: (step: string) => `more by ${step}`,
};
