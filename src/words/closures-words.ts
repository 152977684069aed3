interface Named {
  one: string;
  many: string;
  label: string;
}

interface Rule {
  says: string;
  source: string;
}

/** What each field of the closures is called. */
const labels = {
  opening: 'Opening',
  count: 'How many',
  top: 'First, from the top',
  bottom: 'Last, from the bottom',
  by: 'Spaced by',
  pitch: 'Centre to centre',
  gap: 'Clear gap',
  width: 'Width of one',
  ends: 'Ends',
  level: 'One must be at',
  levelBy: 'To meet that level',
  sewn: 'Already sewn at',
  item: 'What is placed',
  side: 'The other side',
  setBack: 'Set back from the edge',
  lap: 'Lap',
};

const items: Readonly<Record<'hook' | 'button' | 'snap' | 'tie', Named>> = {
  hook: { one: 'Hook', many: 'hooks', label: 'Hooks and eyes' },
  button: { one: 'Button', many: 'buttons', label: 'Buttons' },
  snap: { one: 'Snap', many: 'snaps', label: 'Snaps' },
  tie: { one: 'Tie', many: 'pairs of ties', label: 'Ties' },
};

/** Closures along an opening. */
export const closuresWords = {
  title: 'Closures',
  buttonhole: 'Buttonhole for a button',
  labels,
  items,
  none: 'none',
  unknownWidth: 'not given',
  by: {
    count: 'Number',
    widest: 'Widest space',
    exact: 'Exact space',
    gap: 'Clear gap',
  },
  ends: {
    given: 'As given',
    whole: 'A whole space',
    half: 'Half a space',
  },
  levelBy: {
    'two-pitches': 'Two spacings, ends kept',
    'moved-ends': 'One spacing, ends moved',
  },
  sides: {
    none: 'Not shown',
    meet: 'Edges just meet',
    lap: 'One laps the other',
  },
  fromTop: 'from the top edge',
  apart: (even: boolean) => (even ? 'apart' : 'apart at the top'),
  about: 'about',
  sentence: (count: number, item: Named, first: string, pitches: string) =>
    count === 1
      ? `One ${item.one.toLowerCase()}, in the middle of what is left.`
      : `${count} ${item.many}, the first ${first} from the top edge${pitches === '' ? '' : `: ${pitches}`}. Measure all from there.`,
  stretch: (spaces: number, pitch: string, asMade: boolean) =>
    `${spaces} × ${pitch}${asMade ? ' (sewn)' : ''}`,
  coarse:
    'Two marks fall on the same line of your tape. Take a tape with finer divisions, or fewer closures.',
  offLevel: (off: string, below: boolean) =>
    `The sewn one that serves the level is ${off} ${below ? 'below' : 'above'} it.`,
  endsLabel: 'Ends',
  endsOf: (top: string, bottom: string) => `${top} above, ${bottom} below`,
  gap: 'Clear gap, at least',
  left: 'Left over',
  leftOf: (above: string | undefined, below: string) =>
    above === undefined ? `${below} below the last` : `${above} above, ${below} below`,
  evenly: (count: number) => `Or ${count} spaced evenly, nothing left over`,
  orMovedEnds: (pitches: string, ends: string) => `Or one spacing: ${pitches}; ends ${ends}`,
  orTwoPitches: (pitches: string) => `Or two spacings, ends kept: ${pitches}`,
  thisSide: 'This side',
  otherSide: 'Other side, same marks from the same edge',
  setBackFrom: (length: string) => `${length} in from the edge`,
  projects: (length: string) => `stands ${length} past the edge`,
  setBackSources: (one: Rule, other: Rule) =>
    `Both are published: ${one.says} (${one.source}); ${other.says} (${other.source}).`,
  source: 'Divide by the spaces, not by the closures (The New Dressmaker, handbook, 1921).',
  evenFormula: (opening: string, top: string, bottom: string, spaces: number, pitch: string) =>
    `(${opening} − ${top} − ${bottom}) ÷ ${spaces} ${spaces === 1 ? 'space' : 'spaces'} = ${pitch}.`,
  sharesFormula: (opening: string, spaces: number, pitch: string) =>
    `${opening} ÷ ${spaces} spaces, ends counted = ${pitch}.`,
  exactFormula: (count: number, pitch: string, left: string) =>
    `${count} at ${pitch} from the top; ${left} left below.`,
  oneFormula: (opening: string, top: string, bottom: string) =>
    `Half of ${opening} − ${top} − ${bottom}, from the first place.`,
  levelFormula: (level: string) =>
    `One is at ${level}; the spaces above and below are shared so that they differ least.`,
  aroundFormula: (sewn: number) =>
    `${sewn} stay where they are; each further one goes where the space is widest, then all are spread evenly.`,
};
