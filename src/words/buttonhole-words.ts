interface Rule {
  says: string;
  source: string;
}

/** A buttonhole for a button. */
export const buttonholeWords = {
  title: 'Buttonhole',
  labels: {
    diameter: 'Button across',
    thickness: 'Button thick',
    girth: 'Round the widest part',
    holeRule: 'Length by',
    holeWay: 'Lies',
  },
  notMeasured: 'not measured',
  holeRules: {
    'diameter-thickness': 'Across + thick',
    'diameter-thickness-eighth': 'Across + thick + 1/8 in',
    'half-girth-eighth': 'Half the girth + 1/8 in',
    diameter: 'Just across',
    round: '1 1/4 × across, round button',
    'diameter-eighth': 'Across + 1/8 in',
  },
  holeWays: { horizontal: 'Across the edge', vertical: 'Along the edge' },
  long: 'long',
  sentence: (way: 'horizontal' | 'vertical', past: string, rest: string) =>
    way === 'horizontal'
      ? `Start ${past} past the centre line toward the edge; ${rest} lies the other way. Try it on a scrap before you cut.`
      : `On the centre line: ${past} above the button’s place, ${rest} below. Try it on a scrap before you cut.`,
  overlap: 'Cloth past the centre line, at least',
  others: 'By the other rules',
  published: ({ says, source }: Rule) => `${says} (${source}).`,
  conflict: 'The published rules differ: the choice is yours.',
  run: 'From the edge side of the hole',
};
