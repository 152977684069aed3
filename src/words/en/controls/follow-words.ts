import type { Datum } from '../../../sewing/run.ts';
import { placeWords } from '../common/place-words.ts';

/** Following the marks of a run, on the screen and aloud. */
export const followWords = {
  nothing: 'There are no marks to follow: the numbers give no answer. Go back and mend them.',
  place: (item: string, label: string, count: number) => `${item} ${label} of ${count}`,
  one: (item: string, label: string) => `${item} ${label}`,
  all: (count: number) => `All ${count} marked`,
  from: (kind: string, datum: Datum) => listed(kind, placeWords(datum)),
  step: (length: string, back = false) =>
    back ? `${length} before the last mark` : `${length} from the last mark`,
  made: (length: string, off: string) => `Made at ${length}: ${off} off the plan`,
  planned: (length: string) => `Planned at ${length}`,
  again: (before: string, now: string) =>
    `Measured before: ${before}. Now: ${now}. Which is right?`,
  leaveFirst: (before: string) => `Leave ${before}`,
  takeSecond: (now: string) => `Take ${now} instead`,
  undo: (before: string) => (before === '' ? 'Undo this measure' : `Back to ${before}`),
  refused: (item: string, measures: string) =>
    `Measured on another plan, and not counted here: ${item} ${measures}. Type that plan’s numbers again to go on with it.`,
  refusedMark: (label: string, typed: string) => `${label} at ${typed}`,
  forget: 'Forget them',
  otherwise: 'Made elsewhere',
  respace: 'Space the rest anew',
  asPlanned: 'It is as planned',
  keep: 'Keep this measure',
  cancel: 'Leave it',
  back: 'Back one',
  leave: 'Close',
  speak: 'Speak',
  next: 'Marked. Next',
  restart: 'From the first again',
  goOn: (name: string) => `Next: ${name}`,
  anywhere: 'press anywhere down here',
  say: (item: string, kind: string, place: string, step: string | undefined, back = false) => {
    const way = back ? ` ${step} before the last.` : ` ${step} from the last.`;
    return `${listed(item, kind)}. ${place}.${step === undefined ? '' : way}`;
  },
};

const listed = (...parts: string[]) => parts.filter(Boolean).join(', ');
