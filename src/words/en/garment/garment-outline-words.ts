/** The shapes of the pieces that are laid on a cloth. */
export const outlineWords = {
  title: 'Shapes of the pieces',
  about:
    'A piece is laid as the rectangle it is cut from, until it is given its shape here. Tops lie towards the cut end.',
  none: 'Nothing is laid on this cloth yet.',
  done: 'Done',
  back: 'Back',
  keep: 'Keep it',
  next: 'Next',

  asGarment: (size: string) => `laid as the garment cuts it, ${size}`,
  ownShape: (size: string) => `a shape of its own, ${size}`,
  wrongShape: 'a shape of its own, which can’t be laid yet',
  size: (wide: string, long: string) => `${wide} wide, ${long} long`,
  whole: (wide: string, long: string) => `${wide} wide on the fold, ${long} long`,
  cutting: 'Working it out …',
  notFetched:
    'What works it out couldn’t be fetched: go back, and open it again with a connection.',

  differs: (parts: readonly string[]) =>
    `The garment’s own size differs: this is ${parts.join(' and ')}. Where that isn’t meant, mend one of the two.`,
  wider: (by: string) => `${by} wider`,
  narrower: (by: string) => `${by} narrower`,
  longer: (by: string) => `${by} longer`,
  shorter: (by: string) => `${by} shorter`,

  drawing: (name: string, size: string) => `${name}: ${size}, its top above`,
  fold: 'fold',
  grain: 'grain',
  cutLine: 'cut',
  sewnLine: 'sewn',

  choose: 'Give it a shape',
  four: 'Tapered, or with curved sides',
  fourHint: 'begins as the rectangle it is now',
  points: 'Point by point',
  pointsHint: 'each corner measured down from the top and across from the left',
  file: 'From a drawing in a file',
  fileHint: 'SVG or DXF, in true size; its grain upright',
  onFold: 'Its half, with the fold on the left.',
  takeOff: 'Lay it as the garment cuts it',

  long: 'Length',
  top: 'Width at the top',
  bottom: 'Width at the bottom',
  slant: 'Only the right side slants',
  slantHint: 'the left one runs along the grain',
  sides: ['Left side', 'Bottom', 'Right side', 'Top'] as readonly string[],
  sideOf: (from: number, to: number) => `Side from point ${from} to ${to}`,
  straight: 'straight',
  bowsOut: (by: string) => `bows out ${by}`,
  bowsIn: (by: string) => `bows in ${by}`,
  bow: (side: string) => `${side}: how far it bows`,
  bowHint: 'from the straight way between its ends, where that is most',
  inwards: 'Inwards',
  makeStraight: 'Straight',
  valued: (what: string, value: string) => `${what}: ${value}`,

  corners: (count: number) => (count === 1 ? '1 point' : `${count} points`),
  point: (at: number, down: string, across: string) =>
    `Point ${at}: ${down} down, ${across} across`,
  addPoint: 'Add a point',
  down: (at: number) => `Point ${at}: down from the top`,
  across: (at: number) => `Point ${at}: across from the left`,
  takeOut: 'Take it out',
  most: (most: string) => `An outline has ${most} points at the most.`,
  quarter: 'Turn it a quarter',
  quarterHint: 'so that its grain runs up and down',
  mirror: 'Mirror it',

  isCut: 'This is the line that is cut',
  addsEdges: 'Cut outside it what its edges take',
  edges: (left: string, bottom: string, right: string, top: string) =>
    `left ${left}, bottom ${bottom}, right ${right}, top ${top}`,
  widest: (width: string) => `${width} all round: which edge is which can’t be told here`,
  addsAll: 'Cut the same outside it all round',
  addsBy: (width: string) => `Cut ${width} outside it all round`,
  addedWidth: 'Outside it, all round',

  endForEnd: 'May be turned end for end',
  napKeeps: 'the cloth has a nap, so it isn’t',
  tilt: (degrees: string) => `May lie off the grain: ${degrees}°`,
  tiltAsked: 'Degrees off the grain at the most',
  tiltHint: 'for facings and what is hidden; 0 keeps the grain',
  noTilt: (most: string) =>
    `From 0 to ${most} degrees, in whole ones: with more the grain is lost.`,
  pair: 'Left and right: every other one is the mirror image',
  match: 'Place that falls on the pattern',
  matchAt: (down: string, across: string) => `Falls on the pattern: ${down} down, ${across} across`,
  matchHint:
    'its upper left corner, until another is said; on cloth whose pattern’s repeat is said',
  matchDown: 'From the top down to that place',
  matchAcross: 'From the left across to that place',
  forget: 'Take it off',

  refused: 'From 0 to 50 m.',
  refusedBow: 'No more than half of the side’s length: a half circle is the roundest it gets.',
};
