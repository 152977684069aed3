import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { keptOf, type Sample } from '../../sewing/cloth/shrinkage.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../../sewing/problem.ts';
import { FIELDS, type ShrinkageAsked, type Way } from './fields.ts';

/** What is left of one length each way; across only where it was measured. */
export interface Kept {
  along: number;
  across: number | undefined;
}

/** The sample of one way, as it is asked for. */
export function sampleOf(asked: Partial<ShrinkageAsked>, way: Way): Sample {
  const { before, after, more } = FIELDS[way];
  return {
    before: asked[before] ?? ZERO,
    after: asked[after] ?? [],
    more: asked[more] ?? [],
  };
}

/** What is left each way, or everything that is wrong of all that is asked. */
export function shrinkageOf(asked: ShrinkageAsked): Outcome<Kept> {
  const along = keptOf(sampleOf(asked, 'along'), FIELDS.along);
  const across =
    asked.acrossBefore === undefined ? undefined : keptOf(sampleOf(asked, 'across'), FIELDS.across);
  const problems = [along, across].flatMap((one): readonly Problem[] =>
    one && !one.ok ? one.problems : [],
  );
  const value = (one: Outcome<number>) => (one.ok ? one.value : 1);
  return answerUnless([...problems, ...wantedProblems(asked)], () => ({
    ok: true,
    value: { along: value(along), across: across && value(across) },
  }));
}

/** What is wanted, and what is there, is more than nothing where it is given. */
function wantedProblems(asked: ShrinkageAsked): Problem[] {
  const lengths = (['long', 'wide', 'there', 'thereWide'] as const).flatMap((field) => {
    const given = asked[field];
    return given === undefined ? [] : mustBePositive(field, given);
  });
  return [...lengths, ...otherProblems(asked.other)];
}

/** How much more the interfacing loses than the cloth, over a length; less than nothing is less. */
export function differOf(long: ExactLength, kept: number, other: number): ExactLength {
  return exactLength(long * (other / 100 - (1 - kept)));
}

/** An interfacing can't lose all of itself. */
export function otherProblems(other: number | undefined): Problem[] {
  if (other === undefined || (other >= -50 && other <= 90)) return [];
  return [{ kind: 'out-of-range', field: 'other', given: other, least: -50, most: 90 }];
}
