/** What is asked before a number counts as read. */
export const askWords = {
  line: (value: string, unit: string) => `Is the line marked in the picture ${value} ${unit}?`,
  unit: (value: string) => `The number marked in the picture, ${value}: what does it count?`,
  yes: 'Yes',
  no: 'No, it is another',
  right: 'What is printed there',
  units: { cm: 'Centimetres', mm: 'Millimetres', inch: 'Inches' },
  short: { cm: 'cm', mm: 'mm', inch: 'in' },
  doubtful: 'Not sure yet',
};
