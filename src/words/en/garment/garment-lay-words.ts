/** Laying the pieces of a garment on its cloth. */
export const layWords = {
  title: 'Lay the pieces',
  cloths: 'Cloth',
  found: 'What was found',
  done: 'Done',
  start: 'Find a lay',
  goOn: 'Find a better one',
  stop: 'Stop',
  cloth: 'Cloth, nap',
  places: 'Place by place',
  /** The number of the garment that is as long as the lay. */
  length: (cloth: string) => `Length laid: ${cloth}`,
  others: 'Other cloth',

  nothing: 'Nothing is laid on cloth yet: add a piece, or say what a cloth is for, in Materials.',
  notYet: 'No lay yet. What is found is kept; you can stop at any time.',
  looking: 'Looking …',
};
