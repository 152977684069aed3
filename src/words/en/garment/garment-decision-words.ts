/** A row, or a number, made otherwise than asked: what there is to choose. */
export const decisionWords = {
  ways: 'How it goes on',
  made: (made: number, of: number | undefined) =>
    of === undefined ? `${made} made` : `${made} of ${of} made`,
  stay: (made: number) => (made === 1 ? 'One is made and stays.' : `${made} are made and stay.`),
  stays: 'It is made and stays.',
  number: (made: string, asked: string) => `Made ${made}; asked is ${asked} now.`,
  isNow: (name: string, now: string, was: string) => `${name} is now ${now}; it was ${was}.`,
  where: (difference: string) => `Where does the difference of ${difference} go?`,
  changed: (name: string) => `${name} was changed since.`,
  mark: (rank: number, at: string, plan: string) =>
    `Mark ${rank} is at ${at}; it was to be at ${plan}.`,
  more: (count: number) => `and ${count} more`,
  unknown: 'What is asked has changed since.',
  askedNow: (price: string) => `Asked now: ${price}.`,
  askedNothing: 'What is asked now gives no answer: mend that first.',

  'as-begun': 'Go on as begun',
  spread: (toCome: number) =>
    toCome === 1 ? 'Give it to the one to come' : `Spread over the ${toCome} to come`,
  asked: 'The rest where it is asked now',
  oneMore: 'One more',
  oneLess: 'One fewer',
  today: (count: number) => `${count}, as many as would be asked today`,
  noted: 'Leave it, noted',
  over: (by: string) => `${by} over what is asked`,
  lacks: (by: string) => `lacks ${by} of what is asked`,

  apart: (spaces: string) => `${spaces} apart`,
  apartThere: (spaces: string, before: string) => `${spaces} apart there instead of ${before}`,
  apartNear: (spaces: string) => `${spaces} apart there, as before by the tape`,
  apartAsBefore: (spaces: string) => `${spaces} apart, as before`,
  between: (least: string, most: string) => `${least} to ${most}`,
  end: (length: string) => `the last ${length} from the end`,
  onEnd: 'the last on the end',
  inAll: (count: number) => `${count} in all`,
  price: (parts: readonly string[]) => parts.join(' · '),

  /** @param name the field that takes it up */
  takeUp: (name: string) => `Take it up at ${name}`,
  instead: (after: string, before: string) => `${after} instead of ${before}`,
  follows: (name: string, before: string, after: string) => `${name} ${before} → ${after}`,
  andFollows: (count: number) => `and ${count} more ${count === 1 ? 'number' : 'numbers'}`,
  allow: 'It is fine within…',
  allowHint: 'say by how much it may be off, either way',
  allowed: (text: string) => `Fine within ${text}`,
  allowedHint: 'kept with the way you take; press to change it',
  allowIt: 'Fine within this',
  allowing: 'It may be off by, either way',

  otherwise: 'It was made otherwise',
  otherwiseHint: 'say where it really is',
  cameHint: 'say what it really measures',
  which: 'Which one was made otherwise?',
  one: (rank: number, at: string) => `${rank}, at ${at}`,
  takeBack: (now: string) => `Take back ${now}`,
  takeBackOf: (name: string) => `Take back the change of ${name}`,
  takeBackHint: (was: string) => `it is ${was} again`,
  open: (work: string) => `Open ${work}`,
  later: 'Not now',
};

/** A length as the tape in hand shows it. */
export const handWords = {
  under: (graduation: string) => `under ${graduation}`,
};
