/** What units are called in a sentence. */
export const UNIT_NAMES: Readonly<Record<string, string>> = {
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
  in: 'inches',
  yd: 'yards',
  L: 'button lines',
};
