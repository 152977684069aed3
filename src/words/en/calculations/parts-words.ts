/** Marks that divide an edge evenly: nothing is fastened there. */
export const partsWords = {
  title: 'Halves, quarters, eighths',
  labels: {
    length: 'Edge to divide',
    into: 'Into',
    count: 'How many parts',
    round: 'The edge',
    other: 'The edge it meets',
    follow: 'Follows the marks',
    offset: 'Further on by',
  },
  into: { quarters: 'Quarters', halves: 'Halves', eighths: 'Eighths', other: 'Other' },
  round: { open: 'Has two ends', closed: 'Goes all round' },
  notGiven: 'not given',
  none: 'none',
  samePlaces: 'nothing',
  mark: 'Mark',
  parts: (count: number) => `${count} parts`,
  marks: (count: number) => (count === 1 ? 'mark' : 'marks'),
  followed: (count: number, further: string) =>
    `${count === 1 ? 'The mark lies where the one it follows does' : 'The marks lie where those they follow do'}${further === '' ? '' : `, ${further} further on`}. Measure all from the same end; both edges then agree at every mark.`,
  followedFormula: (length: string, other: string) =>
    `Each mark of the edge it meets: its place ÷ ${length} × ${other}.`,
  about: 'about',
  after: 'in each part',
  open: (marks: number) =>
    `${marks} ${marks === 1 ? 'mark' : 'marks'} between the ends. Measure all from the same end; the last part must come out as long as the others.`,
  closed: (marks: number) =>
    `${marks} marks, the first where you begin: a seam, or the middle of the back. Measure all from there; the last part must lead back to it.`,
  thisEdge: 'The edge to divide',
  otherEdge: 'The edge it meets',
  otherPart: 'Each part of the edge it meets',
  differs: 'In each part',
  longer: (length: string) => `${length} to ease or gather in on the edge it meets`,
  shorter: (length: string) =>
    `the edge it meets is ${length} shorter: stretch it, or ease this one`,
  same: 'both alike: mark to mark without ease',
  formula: (length: string, parts: number, part: string) => `${length} ÷ ${parts} = ${part}.`,
  eachFormula: (other: string, length: string, parts: number, each: string) =>
    `(${other} − ${length}) ÷ ${parts} = ${each} in each part.`,
  source: 'Common practice, no source; the sums are derived here.',
};
