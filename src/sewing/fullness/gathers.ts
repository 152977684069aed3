import { type ExactLength, exactLength, length, settled } from '../../lengths/length.ts';
import { answerUnless, type Outcome } from '../problem.ts';
import { type Gathers, type GathersInput, gathersProblems, pulledIn } from './gathers-input.ts';
import { gatherMarks } from './gathers-marks.ts';

/**
 * A strip gathered to an edge E, of which F stays flat: it is r × (E − F) + F long, r times as full,
 * rounded up to a whole unit, with its ends beside. Told otherwise, r is one over the part it comes in
 * to ("reduced to 2/5"), what was flat of a sample over what it became, or what a strip that is there
 * gives: (strip − 2 ends − F) ÷ (E − F).
 *
 * Source of r × E: National Instructional Media Institute (Government of India), CITS Dress Making,
 * Trade Practical, vol. 2, 2024, page 212. A flat part is derived here.
 *
 * Problems: an edge of nothing, one that is all flat, a fullness under 1 or over 20 (a strip can't be
 * gathered longer), a strip shorter than its edge, a strip over a kilometre, parts that are no whole
 * number from 2 to 60.
 */
export function gathers(input: GathersInput): Outcome<Gathers> {
  return answerUnless(gathersProblems(input), () => {
    const { edge, flat, ends } = input;
    const ratio = ratioOf(input);
    const strip =
      input.full.by === 'strip'
        ? length(input.full.strip - 2 * ends)
        : length(Math.ceil(settled(exactLength(ratio * pulledIn(input) + flat))));
    const cut = length(strip + 2 * ends);
    return { ok: true, value: { ratio, strip, cut, marks: gatherMarks(input, { strip, edge }) } };
  });
}

/**
 * How full a strip comes out that was cut at another length: (cut − 2 ends − F) ÷ (E − F).
 *
 * @param cut as it was measured, joined, with both ends
 */
export function fullnessOf(
  { edge, flat, ends }: Pick<GathersInput, 'edge' | 'flat' | 'ends'>,
  cut: ExactLength,
): number {
  return (cut - 2 * ends - flat) / (edge - flat);
}

function ratioOf(input: GathersInput): number {
  const { full } = input;
  switch (full.by) {
    case 'ratio':
      return full.ratio;
    case 'part':
      return 1 / full.part;
    case 'sample':
      return full.flat / full.gathered;
    case 'strip':
      return fullnessOf(input, full.strip);
  }
}
