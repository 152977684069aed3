/** All steps of a garment, their order, and what is asked before a change is taken back. */
export const garmentOrderWords = {
  title: 'Steps and their order',
  about:
    'The key goes by stage: measure, cut, join, turn up, close, edge. Within a stage it follows the works in this order.',
  earlier: (work: string) => `${work}: earlier`,
  later: (work: string) => `${work}: later`,
  place: (work: string, place: number, of: number) => `${work} is ${place} of ${of} now.`,
  stages: {
    measure: 'measure',
    cut: 'cut',
    join: 'join',
    'turn-up': 'turn up',
    close: 'close',
    edge: 'edge',
  },
  made: 'made',
  partly: (made: number, of: number) => `${made} of ${of} made`,
  before: 'made before the app knew',
  passed: 'passed over',
  open: 'to come',
  waits: 'waits for a number',

  go: 'Go to it',
  pass: 'Pass it over',
  takeUp: 'Take it up again',
  sayBefore: 'Made before the app knew',
  notBefore: 'It isn’t made yet',
  note: 'Note or photo',
  noteWhole: (work: string) => `Note or photo at ${work} as a whole`,
  whole: (work: string) => `All of ${work} was made before the app knew`,
  done: 'Done',

  madeTo: 'Something was made to it since. With this change taken back:',
  undoAll: 'Take it back all the same',
  leave: 'Leave it as it is',
};
