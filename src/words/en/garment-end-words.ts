/** After the last mark of a garment. */
export const garmentEndWords = {
  done: (made: number, marks: number) =>
    made === marks ? `All ${marks} marks made` : `${made} of ${marks} marks made`,
  keeping: (count: number) => `${count} more being kept: not on the phone yet.`,
  extra: (name: string, count: number) =>
    `${name}: ${count === 1 ? 'one more is made than is' : `${count} more are made than are`} asked for now.`,
  leaveHeld: 'Leave before it is kept?',
  stay: 'Stay here',
  leaveAnyway: 'Leave, and keep the page open',
  none: 'There are no marks to follow on this garment yet. Keep a calculation that has marks, such as closures or a hem.',
  toFirstLeft: 'To the first not made',
  close: 'Close',
  back: 'Back one',
  blocked: (name: string) => `${name}: its numbers give no answer. Open it and mend them:`,
  unknown: (name: string) =>
    `${name}: this version of the app doesn’t know that calculation. Update the app; it stays kept.`,
  missing: (name: string) =>
    `${name}: its calculation could not be fetched. Connect once, then open this again.`,
  open: (name: string) => `Open ${name}`,
};
