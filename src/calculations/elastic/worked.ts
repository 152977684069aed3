import { ZERO } from '../../lengths/length.ts';
import { type Casing, casing } from '../../sewing/fullness/casing.ts';
import { type Elastic, type ElasticInput, elastic } from '../../sewing/fullness/elastic.ts';
import { MOST_GATHER_PARTS } from '../../sewing/fullness/gathers-input.ts';
import { gatherMarks } from '../../sewing/fullness/gathers-marks.ts';
import { mustBeCount } from '../../sewing/length-checks.ts';
import { type Outcome, type Problem, refused } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { type ElasticAsked, elasticInput } from './fields.ts';

/** An elastic in its casing as it was worked out, with what was asked. */
export interface Worked {
  asked: ElasticAsked;
  input: ElasticInput;
  plan: Elastic;
  casing: Casing;
  marks: { elastic: Run; edge: Run };
}

/** All that is asked of an elastic, or every reason why not. */
export function elasticOf(asked: ElasticAsked): Outcome<Worked> {
  const input = elasticInput(asked);
  const [plan, turned] = [elastic(input), casing(asked)];
  const parts = partsProblems(asked.parts);
  if (plan.ok && turned.ok && parts.length === 0) {
    const marks = marksOf(input, plan.value.ring, asked.parts);
    return { ok: true, value: { asked, input, plan: plan.value, casing: turned.value, marks } };
  }
  const [first, ...more] = [
    ...(plan.ok ? [] : plan.problems),
    ...(turned.ok ? [] : turned.problems),
    ...parts,
  ];
  if (!first) throw new Error('no answer, and no reason why');
  return refused(first, ...more);
}

/** What is wrong with how many parts are marked. */
export function partsProblems(parts: number): Problem[] {
  return mustBeCount('parts', parts, 2, MOST_GATHER_PARTS);
}

/** Marks that meet: on the elastic from its first end, on the casing, or the body, from its seam. */
export function marksOf(
  { girth, round }: Pick<ElasticInput, 'girth' | 'round'>,
  ring: Elastic['ring'],
  parts: number,
): Worked['marks'] {
  const edge = round ?? girth;
  const shape = { edge, flat: ZERO, ring: true, ends: ZERO, parts };
  const marks = gatherMarks(shape, { strip: ring, edge });
  return { elastic: marks.strip, edge: { ...marks.edge, datum: 'elastic-meets' } };
}
