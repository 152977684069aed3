/** A key of a page's own: a field called so is refused by the schema it would stand in. */
export type PageKey = PlainKey | `paper-${string}` | `${FollowKey}-${number}`;

/** Those that are no pattern. */
export type PlainKey =
  | 'u'
  | 'kept'
  | 'seen'
  | 'taped'
  | 'asked'
  | 'run'
  | 'stretch'
  | 'counting'
  | 'counting-from'
  | `${'other' | 'count'}-dropped`
  | 'paper'
  | FollowKey;

export type FollowKey = 'at' | 'made' | 'was' | 'plan' | 'earlier';
