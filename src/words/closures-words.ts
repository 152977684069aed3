interface Named {
  one: string;
  /** One of them in a sentence. */
  single: string;
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
  leastGap: 'Clear gap, at least',
  item: 'What is placed',
  side: 'The other side',
  setBack: 'Set back from the edge',
  lap: 'Lap',
};

const items: Readonly<Record<'hook' | 'button' | 'snap' | 'tie', Named>> = {
  hook: { one: 'Hook', single: 'hook', many: 'hooks', label: 'Hooks and eyes' },
  button: { one: 'Button', single: 'button', many: 'buttons', label: 'Buttons' },
  snap: { one: 'Snap', single: 'snap', many: 'snaps', label: 'Snaps' },
  tie: { one: 'Tie', single: 'pair of ties', many: 'pairs of ties', label: 'Ties' },
};

/** Why one alone stands where it does. */
const ONE_WHY = {
  middle: ': the middle of what is left',
  level: ': the level that must carry one',
  room: ': there is room for no more at this spacing',
  sewn: ', where it is sewn',
};

/** Closures along an opening. */
export const closuresWords = {
  title: 'Closures',
  buttonhole: 'Buttonhole for a button',
  parts: 'Halves, quarters, eighths',
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
    `${count} ${item.many}, the first ${first} from the top edge${pitches === '' ? '' : `: ${pitches}`}. Measure all from that edge.`,
  one: (item: Named, first: string, why: 'middle' | 'level' | 'room' | 'sewn') =>
    `One ${item.single}, ${first} from the top edge${ONE_WHY[why]}.`,
  stretch: (spaces: number, pitch: string, asMade: boolean) =>
    `${spaces} × ${pitch}${asMade ? ' (sewn)' : ''}`,
  offLevel: (off: string, below: boolean) =>
    `The sewn one that serves the level is ${off} ${below ? 'below' : 'above'} it.`,
  givesWay: {
    level: (off: string, below: boolean) =>
      `The level gives way: there is no mark or no room for one of its own, and the nearest is ${off} ${below ? 'below' : 'above'} it. Give one more, or leave it so.`,
    end: (top: boolean, is: string, asked: string) =>
      `The ${top ? 'top' : 'bottom'} end gives way: there is no mark or no room for one there, and the ${top ? 'first' : 'last'} is ${is} from the edge, not ${asked}.`,
    gap: (is: string, asked: string) =>
      `The clear gap gives way: so many leave ${is}, not ${asked}. Give fewer, or leave it so.`,
  },
  overhang: (top: boolean, by: string) =>
    `The ${top ? 'first' : 'last'} is so near the ${top ? 'top' : 'bottom'} edge that its width hangs over it by ${by}.`,
  endsLabel: 'Ends',
  endsOf: (top: string, bottom: string) => `${top} above, ${bottom} below`,
  gap: 'Clear gap, at least',
  left: 'Left over',
  leftOf: (above: string | undefined, below: string) =>
    `${above === undefined ? '' : `${above} more at the top, `}${below} more at the bottom than asked`,
  evenly: (count: number, atLevel: boolean) =>
    count === 1
      ? `Or the one ${atLevel ? 'on the level' : 'in the middle'}, nothing left over`
      : `Or ${count} spaced evenly, nothing left over`,
  evenlyAtLevel: (count: number, pitches: string) =>
    `Or ${count} with the ends as asked, nothing left over: ${pitches}`,
  orMovedEnds: (pitches: string, ends: string) => `Or one spacing: ${pitches}; ends ${ends}`,
  orTwoPitches: (pitches: string) => `Or two spacings, ends kept: ${pitches}`,
  thisSide: 'This side',
  otherSide: 'Other side, same marks from the same edge',
  setBackFrom: (length: string) => `${length} in from the edge`,
  projects: (length: string) => `stands ${length} past the edge`,
  setBackSources: (one: Rule, other: Rule) =>
    `Both are published: ${one.says} (${one.source}); ${other.says} (${other.source}).`,
  source: 'Divide by the spaces, not by the closures (The New Dressmaker, handbook, 1921).',
  formulas: {
    even: (opening: string, top: string, bottom: string, spaces: string, pitch: string) =>
      `(${opening} − ${top} − ${bottom}) ÷ ${spaces} = ${pitch}.`,
    shares: (opening: string, spaces: string, pitch: string) =>
      `${opening} ÷ ${spaces} = ${pitch}, what lies before the first and after the last counted in.`,
    widest: (pitch: string) => ` The fewest with no space wider than ${pitch}.`,
    gap: (gap: string, width: string, pitch: string) =>
      `${gap} + ${width} = ${pitch} centre to centre. `,
    last: (first: string, spaces: number, pitch: string, last: string) =>
      `${first} + ${spaces} × ${pitch} = ${last} to the last; `,
    left: (opening: string, last: string, bottom: string, left: string) =>
      `${opening} − ${last} − ${bottom} = ${left} left over.`,
    middle: (opening: string, top: string, bottom: string, place: string) =>
      `${top} + (${opening} − ${top} − ${bottom}) ÷ 2 = ${place}.`,
    half: (opening: string, place: string) => `${opening} ÷ 2 = ${place}.`,
    above: (room: string, spaces: string, pitch: string) =>
      `${room} ÷ ${spaces} = ${pitch} above the level`,
    below: (room: string, spaces: string, pitch: string) =>
      `${room} ÷ ${spaces} = ${pitch} below it`,
    least: ' Of all ways to share the spaces out, these two differ least.',
    minus: (one: string, other: string) => `(${one} − ${other})`,
    minusTwo: (one: string, other: string, third: string) => `(${one} − ${other} − ${third})`,
    toFirst: (level: string, spaces: number, pitch: string, first: string) =>
      `${level} − ${spaces} × ${pitch} = ${first} to the first`,
    fromLast: (opening: string, level: string, spaces: number, pitch: string, end: string) =>
      `${opening} − ${level} − ${spaces} × ${pitch} = ${end} below the last`,
    moved: ' The even row is moved until one is on the level.',
    narrowed: (even: string) =>
      ` Spaced evenly it would be ${even}; it is made narrower so that the ends stay clear of the edges.`,
    onLevel: (level: string) => `It stands on the level, ${level} from the top edge.`,
  },
  spaces: (whole: number, half: boolean) =>
    half
      ? `${whole === 0 ? '' : `${whole} `}1/2 ${whole === 0 ? 'space' : 'spaces'}`
      : `${whole} ${whole === 1 ? 'space' : 'spaces'}`,
  around: (sewn: number, more: number, how: string) =>
    `${sewn} ${sewn === 1 ? 'stays where it is' : 'stay where they are'}; ${more === 0 ? 'there is no other to place.' : how}`,
  aroundBy: {
    count: 'each further one goes where the space is widest, then they are spread evenly.',
    widest: (pitch: string) =>
      `around them go the fewest that leave no space wider than ${pitch}, spread evenly.`,
    nearest: (pitch: string) =>
      `around them go as many as bring the even spaces nearest to ${pitch}.`,
  },
};
