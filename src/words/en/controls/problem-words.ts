import { type ExactLength, exactLength } from '../../../lengths/length.ts';
import type { Problem } from '../../../sewing/problem.ts';

/** How a screen names its fields and shows a length. */
export interface ProblemSay {
  /** The label of a field, as it stands beside the box. */
  field(key: string): string;
  /** The most or the least there may be must not be rounded past itself. */
  length(value: ExactLength, which?: 'most' | 'least'): string;
}

/** Says in one sentence which field is wrong and what would put it right. */
export function problemWords(problem: Problem, say: ProblemSay): string {
  return `${say.field(problem.field)}: ${reason(problem, say.length)}.`;
}

function reason(problem: Problem, show: ProblemSay['length']): string {
  switch (problem.kind) {
    case 'not-positive':
      return 'give more than nothing';
    case 'negative':
      return `${show(problem.given)} is less than nothing; give nothing or more`;
    case 'too-short':
      return `${show(problem.given)} is too short; ${endsSaid(problem, show)}`;
    case 'too-long':
      return `${show(problem.given)} is too long; ${endsSaid(problem, show)}`;
    case 'not-over':
      return `${show(problem.given)} must be more than ${show(problem.over)}`;
    case 'not-under':
      return `${show(problem.given)} must be less than ${show(problem.under)}`;
    case 'too-few':
    case 'too-many':
      return endsSaid(problem, String);
    case 'not-whole':
      return 'give a whole number';
    case 'does-not-fit':
      return `this needs ${show(problem.needed)} and there is ${show(problem.room)}; ${missing(problem, show)}`;
    case 'ends-too-long':
      return `first and last take ${show(problem.needed)} of ${show(problem.room)} and leave nothing between them; ${missing(problem, show)}`;
    case 'too-close':
      return `so close, more than ${problem.most} would be needed; give at least ${show(problem.least, 'least')}`;
    case 'overlap':
      return `${show(problem.given)} wide, ${show(problem.pitch)} apart, they would overlap; ${missing({ needed: problem.given, room: problem.pitch }, show)}`;
    case 'bent-and-turned':
      return 'a strip is either bent or turned at corners; leave one of the two out';
    case 'not-in-order':
      return `${show(problem.given)} comes before the one in front of it; give them in order`;
    case 'fewer-than-sewn':
      return `${problem.sewn} are sewn already; give at least ${problem.sewn}`;
    case 'outside':
      return `${show(problem.given)} lies outside; give a place from ${show(problem.least, 'least')} to ${show(problem.most, 'most')}`;
    case 'out-of-range':
      return `give a number from ${problem.least} to ${problem.most}`;
    case 'twice':
      return `${show(problem.given)} is there twice; take one out`;
    case 'crosses-itself':
      return `side ${problem.other} would lie over side ${problem.side}; change the length of a side from ${problem.side + 1} to ${problem.other}, or make the strip narrower`;
    case 'not-round':
      return `${problem.corners} corners of ${problem.given}° do not come back to the start; they need ${Math.round(problem.needed * 10) / 10}° each, or give every corner, one at the start as 0`;
    case 'gap':
      return `the last side would end ${show(problem.gap)} from where the first begins; measure each side again`;
    case 'not-as-many':
      return `${problem.given} given, ${problem.needed} needed: one for each`;
    case 'below-nothing':
      return problem.given < 0
        ? `${problem.given} is less than nothing; give nothing or more`
        : 'all of them are nothing; give more for one at least';
    case 'not-hundred':
      return problem.given === 0
        ? 'nothing takes a share; give how many there are of one kind at least'
        : `all shares, each as often as there are of its kind, come to ${Math.round(problem.given * 10) / 10} %; they must make 100`;
    default:
      return unworded(problem);
  }
}

/** Both ends at once, where both are known. */
function endsSaid<End>(
  { least, most }: { least?: End; most?: End },
  show: (end: End, which: 'most' | 'least') => string,
): string {
  const ends = [
    ...(least === undefined ? [] : [`at least ${show(least, 'least')}`]),
    ...(most === undefined ? [] : [`at most ${show(most, 'most')}`]),
  ];
  return `give ${ends.join(', ')}`;
}

function missing(
  { needed, room }: { needed: ExactLength; room: ExactLength },
  show: ProblemSay['length'],
): string {
  const short = exactLength(needed - room);
  return short > 0 ? `${show(short)} is missing` : 'shorten one of them';
}

/** Fails to compile while a kind of problem has no words. */
function unworded(problem: never): never {
  throw new Error(`no words for ${JSON.stringify(problem)}`);
}
