/** What is asked before a number counts as read. */
export const askWords = {
  line: (value: string, unit: string) => `Is the line marked in the picture ${value} ${unit}?`,
  unit: (value: string) => `The number marked in the picture, ${value}: what does it count?`,
  yes: 'Yes',
  no: 'No, it is another',
  right: 'What is printed there',
  printed: (typed: string, least: number, most: number) =>
    `${typed === '' ? 'Nothing is typed' : `“${typed}” can’t be printed there`}: type the number at the marked line, whole, from ${least} to ${most}.`,
  units: { cm: 'Centimetres', mm: 'Millimetres', inch: 'Inches' },
  short: { cm: 'cm', mm: 'mm', inch: 'in' },
  doubtful: 'Not sure yet',
};
