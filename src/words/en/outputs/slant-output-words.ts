/** What a slanted hem gives, and what the hand does for it. */
export const slantOutputWords = {
  second: (one: string) => `Second piece: ${one}`,
  cut: { one: 'Cut to, one side', other: 'Cut to, other side' },
  cutSide: { one: 'Cut one side so long', other: 'Cut the other side so long' },
  trim: { one: 'Cut off, one side', other: 'Cut off, other side' },
  trimSide: {
    one: 'Trim the raw edge at one side, parallel to the hem line',
    other: 'Trim the raw edge at the other side',
  },
  down: 'Inner fold, down from the hem line',
  markDown: 'Mark the inner fold on both sides, down from the hem line',
  mirror: 'Sides of the allowance, aside at the inner fold',
  cutMirror: 'Cut the sides to there: out at the shorter side, in at the longer',
  firstPress: 'First turn',
  pressFirst: 'Press the first turn',
  hemLine: 'Hem line',
  pressHem: 'Press the hem line',
  depth: 'Depth of the hem',
  along: 'Along the hem line',
  angle: 'Hem line off square, degrees',
};
