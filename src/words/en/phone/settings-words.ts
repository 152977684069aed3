/** The settings screen. */
const names = {
  unit: 'A number without a unit is in',
  metric: 'The centimetre tape is divided in',
  inch: 'The inch tape is divided in',
  hand: 'The phone is in the',
  theme: 'Light',
  voice: 'Marks are spoken',
  decimalMark: 'Decimal mark',
  keys: 'Numbers are typed on',
};

const values: Readonly<Record<keyof typeof names, Readonly<Record<string, string>>>> = {
  unit: { cm: 'centimetres', in: 'inches', mm: 'millimetres' },
  metric: { '1mm': '1 mm', '0.5mm': '0.5 mm' },
  inch: { '1/8in': '1/8 in', '1/16in': '1/16 in', '1/32in': '1/32 in' },
  hand: { right: 'right hand', left: 'left hand' },
  theme: { phone: 'as the phone', paper: 'pattern paper', night: 'night bench' },
  voice: { off: 'when asked', on: 'each time' },
  decimalMark: { '.': 'point, 1.5', ',': 'comma, 1,5' },
  keys: { pad: 'the number pad here', phone: 'the phone’s keyboard' },
};

export const settingsWords = {
  title: 'Settings',
  about: 'How this bench is set up. Kept on this phone only.',
  leave: 'Back',
  names,
  values,
};
