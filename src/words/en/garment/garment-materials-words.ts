/** Everything to have at hand for a garment. */
export const garmentMaterialsWords = {
  title: 'Materials',
  list: 'What to have at hand',
  none: 'Nothing to have at hand yet: add a piece, a closure or a lace, or what no work takes.',
  done: 'Done',
  add: 'Add a material',
  addDo: 'Add',
  addHint: 'such as: lining, zip, thread',
  kinds: {
    cloth: 'Cloth',
    interfacing: 'Interfacing',
    strip: 'Strip',
    bias: 'Bias strip',
    lace: 'Lace or cord',
    tape: 'Tape, by length',
    thread: 'Thread',
    closure: 'Closures',
    other: 'By number',
  },

  isThere: (name: string) => `${name}: it is there`,
  nothingYet: '—',
  soFar: (amount: string) => `so far ${amount}`,
  atMost: (amount: string) => `at most ${amount}`,
  metres: (number: string) => `${number} m`,
  yards: (number: string) => `${number} yd`,
  together: (one: string, other: string) => `${one} (${other})`,
  count: (count: number) => String(count),

  made: 'used already',
  partly: 'partly used',
  bound: 'laid in rows',
  asLaid: 'as the lay was found',
  spools: (count: number) => (count === 1 ? '1 spool' : `${count} spools`),
  lacking: (amount: string) => `lacks ${amount}`,
  stops: (works: readonly string[]) => `stops ${works.join(', ')}`,
  open: {
    waits: 'waits for a number',
    undecided: 'a decision is open',
    'no length': 'say how long it is',
    'no width': 'say how wide it is',
    'too wide': 'a piece is wider than it',
    'no bias': 'a bias strip can’t be cut from it',
    'too much': 'more than can be reckoned',
  },
  others: (first: string, more: number) => (more === 0 ? first : `${first}, and ${more} more`),
  notTaken: 'not counted: nothing is taken of it',
  line: (parts: readonly string[]) => parts.filter(Boolean).join(' · '),

  total: (money: string) => `All together ${money}`,
  left: (money: string) => `still to buy ${money}`,
  without: (count: number) => (count === 1 ? 'one has no price yet' : `${count} have no price yet`),
  unsound: (count: number) =>
    count === 1
      ? 'What is said of one material can’t be read here. It is kept as it is; say it again, or update the app.'
      : `What is said of ${count} materials can’t be read here. It is kept as it is; say it again, or update the app.`,
};
