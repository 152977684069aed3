/** Words of a question that name nothing that is looked for. */
export const PASSED_OVER =
  'how much many long wide do does i need the a an of for to is my what where go goes with';

/** Finding a calculation by its name or by what it is for. */
export const findWords = {
  title: 'What to work out',
  about: 'By its name, or by what it is for.',
  list: 'Calculations, by stage of the work',
  search: 'Look for',
  none: (sought: string) => `Nothing is called or is for “${sought}”. All there is stands below.`,
  leave: 'Back',
};
