/** One thing to have at hand: how much of it and why, and what can be said of it. */
export const garmentMaterialWords = {
  laid: (long: string, wide: string) =>
    `Laid ${wide} takes ${long}: the longest pieces first, side by side, a new row where the next has no room.`,
  openCloth: (width: string) => `open, ${width} wide,`,
  foldedCloth: (width: string) => `folded, ${width} wide when open,`,
  upperBound:
    'That is an upper bound: pieces laid with care take less. Until a lay is found, buy no less.',
  shapesAside:
    'Pieces with a shape of their own are counted in it as the garment cuts them, and may take more or less: lay them before you buy.',
  inRepeats: (repeat: string, found: boolean) =>
    `Its pattern comes again every ${repeat}: each row takes whole repeats, so that pieces begin alike in it, and one repeat more is counted.${found ? ' A lay on folded cloth can’t follow the pattern of the layer below, and isn’t counted: lay it open to have it counted.' : ''}`,
  asLaidInRepeats: (repeat: string) =>
    `In it each piece begins alike in the pattern; one repeat of ${repeat} more is counted, since the shop cuts anywhere in it.`,
  asLaid: (long: string, how: string) => `The lay that was found, ${how} takes ${long}.`,
  bias: (long: string, join: string, shortest: string) =>
    `Bias strips take ${long} of its whole width: cut open at 45°, joined with ${join} seams, none shorter than ${shortest}.`,
  noBias: (work: string) =>
    `${work}: no bias strip so wide or so long can be cut from it. Take wider cloth, or a narrower strip.`,
  cutFrom: (cloth: string) => `Cut it from: ${cloth}`,
  biasTakes: (long: string) => `${long} of it, instead of strip by length`,
  clothBrought: 'no piece is cut from cloth here yet; say then how wide it is',
  onlyStrips: 'No piece of it is known here: only strips are counted.',
  biasNoWidth: 'instead of strip by length; say how wide the cloth is',
  sum: (takes: string) => `The works take ${takes}.`,
  besides: (more: string) => `Wanted besides: ${more}.`,
  reckoned: (by: readonly string[], have: string) => `With ${by.join(' and ')}: ${have}.`,
  spareBy: (share: string) => `${share} % spare`,
  shrinksBy: (share: string) => `${share} % lost in the wash`,
  sold: (unit: string, buy: string) => `Sold by ${unit}: ${buy} to buy.`,
  spools: (count: number, unit: string, buy: string) =>
    `By the spool of ${unit}: ${count === 1 ? '1 spool' : `${count} spools`}, ${buy} to buy.`,
  fedAtOnce: (fed: number) =>
    `Of it ${fed} threads are sewn with at once, each from a spool of its own: however they share it, so many spools do.`,
  there: (there: string) => `There: ${there}.`,
  lacksSaid: (amount: string) => `It lacks ${amount}.`,
  stopsSaid: (works: readonly string[]) =>
    `What is there doesn’t reach for ${works.join(', ')}: buy more before you begin there.`,
  costs: (money: string) => `It costs ${money}.`,

  noWidth: 'Say how wide it is: then it is known how much is wanted.',
  tooWide: (piece: string, by: string) =>
    `${piece} is ${by} wider than the cloth: take wider cloth, or cut the piece in two with a seam.`,
  noLength: (strip: string) => `${strip}: say how long it is, along its edge.`,
  undecided: (work: string) => `${work}: decide first how what is made otherwise goes on.`,
  tooMuch: 'That is more than a kilometre. Look over the numbers it is worked out from.',

  piece: (name: string, count: number, along: string, across: string) =>
    `${name}: ${count === 1 ? '' : `${count} × `}${across} wide, ${along} long`,
  strip: (name: string, across: string) => `${name}: ${across} wide, as long as its edge`,
  long: (name: string, long: string) => `${name}: ${long}`,
  pieces: (name: string, count: number, long: string) => `${name}: ${count} × ${long}`,
  waits: (name: string) => `${name}: not known yet`,
  onFold: (piece: string) => `${piece}, on the fold`,

  parts: {
    width: 'Usable width',
    repeat: 'Pattern comes again every',
    unit: 'Sold by',
    spare: 'Spare, %',
    shrinksAlong: 'Loses in length when washed, %',
    shrinksAcross: 'Loses in width when washed, %',
    price: 'Price',
    there: 'How much is there',
    more: 'Wanted besides',
  },
  hints: {
    width: 'without the selvedges',
    repeat: 'of stripes across, checks or prints, along the cloth',
    widthOfStrip: 'of the hide or cloth it is cut from; as it is bought, leave it',
    unit: 'the least the shop adds',
    unitOfThread: 'as much as is on one spool: then spools are counted',
    spare: 'more than the works take',
    shrinksAlong: 'wash a marked piece first: what it lost ÷ its length before × 100',
    shrinksAcross: 'what pieces lose after they are cut, is said in each piece',
    price: { m: 'of a metre', yd: 'of a yard', one: 'of one', pack: 'of as many as it is sold by' },
    there: 'with what is used already',
    more: 'what no work here takes',
  },
  per: {
    m: (money: string) => `${money} a metre`,
    yd: (money: string) => `${money} a yard`,
    one: (money: string) => `${money} each`,
    pack: (money: string, count: number) => `${money} for ${count}`,
  },
  share: (share: string) => `${share} %`,
  notSaid: 'not said',
  partOf: (name: string, part: string) => `${name}: ${part}`,
  valued: (part: string, value: string) => `${part}: ${value}`,
  lengthOf: (strip: string) => `How long: ${strip}`,

  keep: 'Keep it',
  clear: 'Say nothing of it',
  noShare: (most: string) =>
    `A share is from 0 to ${most} per cent. What grows in the wash counts as 0.`,
  noMoney: 'A price has whole hundredths, as 12.50, and is no less than nothing.',
  noMoneySoHigh: (most: string) => `A price is ${most} at most.`,
  noAmount: 'It is more than nothing, and no more than a kilometre.',
  noCount: 'It is a whole number from 1 to a million.',

  lay: 'Lay the pieces',
  layHint: 'how much it takes, and where each piece lies',
  rename: 'Rename',
  folded: 'Cut from folded cloth',
  foldedHint: (open: string, folded: string) => `open ${open}, folded ${folded}`,
  pairs: 'pairs through both layers',
  for: 'What it is for',
  forget: 'Forget what is said of it',
  remove: 'Take it off',
  name: (name: string) => `${name}, name`,

  nameHint: 'such as: lining, zip, thread',
  done: 'Done',
};

/** A material as a line of a sheet. */
export const materialLineWords = {
  there: '[x]',
  open: '[ ]',
  ofKind: (name: string, kind: string) => `${name}: ${kind.toLowerCase()}`,
};
