/** Why an outline can’t be laid, and what to do about it. */
export const pieceProblemWords = {
  fields: {
    length: 'The length',
    width: 'The width',
    start: 'The width at the top',
    end: 'The width at the bottom',
    x: 'How far down it lies',
    y: 'How far across it lies',
    rise: 'How far it bows',
    allowance: 'What is cut outside it',
  },
  side: (from: number) => `The side from point ${from} on`,
  atPoint: (point: number, field: string) => `Point ${point}. ${field}`,
  atSide: (side: string, field: string) => `${side}. ${field}`,
  notANumber: (field: string) => `${field} can’t be read: type it again.`,
  outOfRange: (field: string, is: string, least: string, most: string) =>
    `${field} is ${is}: it can be from ${least} to ${most}. Type it again, and look at its unit.`,
  tooFew: (points: number, least: number) =>
    `${points === 1 ? 'One point is' : `${points} points are`} no outline yet: add points until there are ${least}, in turn around the piece.`,
  tooMany: (most: number) =>
    `It has more than ${most} corners, finer than cloth is cut: draw it with fewer.`,
  noArea:
    'Its corners lie along one line, so that there is no cloth in it: move one of them, or add the one that is missing.',
  crosses: (side: string, other: string, down: string, across: string) =>
    `${side} and ${other.charAt(0).toLowerCase()}${other.slice(1)} meet where they shouldn’t, ${down} down and ${across} across: give the points in turn around the piece, and let the sides bow less.`,
  tooRound: (side: string, is: string, most: string) =>
    `${side} bows by ${is}, and can by ${most}: more than half a circle would be two sides. Put a point at its middle.`,
  noFold:
    'It lies on the fold, and has no straight side along its left edge to be the fold: turn it or mirror it until the fold is on the left, or give two points there.',
};
