/** What a calculation is called, and plain words that it may be looked for by. */
export interface CalculationName {
  name: string;
  also: string;
}

/** Every calculation, at the stage of the work where it stands. */
export const calculationNames: Readonly<
  Record<string, { stage: string; of: Readonly<Record<string, CalculationName>> }>
> = {
  measure: {
    stage: 'Measure',
    of: {
      convert: {
        name: 'Inches and centimetres',
        also: 'convert units millimetres fractions sum add divide tape',
      },
      fit: {
        name: 'Fit: ease and girth',
        also: 'finished size body bust chest waist hip wearing room too tight loose let out take in dart seam pieces width lacks',
      },
      opening: {
        name: 'Does it pass: head, hand, hips',
        also: 'neck opening neckline placket slit over the head cuff hand heel trouser hem pull on closed fits through',
      },
      vent: {
        name: 'Room at the hip, vent',
        also: 'jacket coat skirt slit walk step stride hem narrow sweep back vent begins',
      },
      sizes: {
        name: 'Stitches, buttons, needles',
        also: 'button size line ligne stitch length per inch needle number thread sewing machine',
      },
    },
  },
  cut: {
    stage: 'Cut',
    of: {
      piece: {
        name: 'Piece to cut',
        also: 'pattern piece cut size width length seam allowance on the fold pair pocket patch panel sleeve shrinkage',
      },
      shares: {
        name: 'Sharing a change',
        also: 'alter pattern girth length wider narrower take in let out waist hip dart share percent grade lengthen shorten side seam',
      },
      pleats: {
        name: 'Pleats',
        also: 'knife box inverted fold skirt kilt how much cloth strip width fullness',
      },
      facing: {
        name: 'Facing',
        also: 'lining of an edge strip neckline armhole curved hem shaped bias',
      },
    },
  },
  join: {
    stage: 'Join',
    of: {
      seam: {
        name: 'Seam',
        also: 'allowance finish plain french felled flat bound trim clip curve girth taken in let out',
      },
      match: {
        name: 'Matching two edges',
        also: 'ease easing notches sleeve head cap armhole cuff waistband neckline facing band collar set in gather fit together shoulder seam',
      },
      parts: {
        name: 'Equal parts',
        also: 'quarter marks divide evenly halves thirds pins notches gather ease even spacing',
      },
    },
  },
  'turn-up': {
    stage: 'Turn up',
    of: {
      hem: {
        name: 'Hem',
        also: 'turn up fold press bottom edge curved narrow rolled blind depth trouser skirt sleeve end',
      },
      corner: { name: 'Mitred corner', also: 'mitre hem vent corner diagonal fold napkin' },
    },
  },
  close: {
    stage: 'Close',
    of: {
      closures: {
        name: 'Closures',
        also: 'hooks eyes buttons snaps ties fasteners spacing opening front placket how many',
      },
      buttonhole: { name: 'Buttonhole', also: 'button hole slit length place overlap lap stand' },
    },
  },
  edge: {
    stage: 'Edge',
    of: {
      edging: {
        name: 'Edging strip',
        also: 'holes punch leather suede strip pitch rows stagger border trim',
      },
      centre: { name: 'Centre by counting', also: 'middle count holes half' },
      lacing: {
        name: 'Lacing',
        also: 'lace cord ribbon thong how much length loop whip cross holes eyelets',
      },
      crossing: { name: 'Crossing strips', also: 'overlap angle strips meet clash holes punch' },
    },
  },
};

/** What each calculation is called. */
export const CALCULATION_NAMES: Readonly<Record<string, string>> = Object.fromEntries(
  Object.values(calculationNames).flatMap(({ of }) =>
    Object.entries(of).map(([id, { name }]) => [id, name]),
  ),
);
