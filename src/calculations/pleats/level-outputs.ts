import { pleatsOutputWords as words } from '#words/outputs/pleats-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Output, outputOf, runTaken, type TakenAway } from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import { type LevelPleats, pleatsAtLevel } from '../../sewing/fullness/pleat-levels.ts';
import { LINES } from '../../sewing/fullness/pleat-marks.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { type LevelField, PLEAT_FIELDS, type PleatsAsked, pleatFields } from './fields.ts';
import { plannedPleats } from './pleated.ts';

const output = outputOf(pleatFields);

type Fields = Pick<PleatsAsked, (typeof PLEAT_FIELDS)[number]>;

/** The same pleats where the strip is fitted once more: as many as the lines at the top are of, or as were begun there. */
function fitted(
  fields: Fields,
  level: { field: LevelField; across: PleatsAsked[LevelField] },
  marks: number,
): Outcome<LevelPleats> {
  const count = Math.round(marks / LINES[fields.kind]);
  const top = plannedPleats(fields, count);
  if (!top.ok) return top;
  const { input, plan } = top.value;
  const { across } = needed({ across: level.across });
  return pleatsAtLevel(input, plan, { field: level.field, across });
}

/** What one level gives: how deep its folds are, and their lines. */
function outputsAt(field: LevelField, top: Output): Output[] {
  const asked = {
    reads: [...PLEAT_FIELDS, field],
    takes: [top],
    when: { field, is: given(pleatFields.specs[field]) },
  } as const;
  return [
    output({
      ...asked,
      key: `${field}-depth`,
      name: words.levelDepth[field],
      kind: 'length',
      of: (fields, { takes }) => {
        const marks = runTaken(takes, top).marks.length;
        return mapped(fitted(fields, { field, across: fields[field] }, marks), (at) => at.depth);
      },
    }),
    output({
      ...asked,
      key: `${field}-marks`,
      name: words.levelMarks[field],
      kind: 'run',
      decides: ['by', 'there', 'width', 'count', 'kind'],
      step: { do: words.levelMark[field], datum: 'cut-end', stage: 'cut', undoable: true },
      of: (fields, { takes, count }) => {
        const marks = count ?? runTaken(takes, top).marks.length;
        const found = fitted(fields, { field, across: fields[field] }, marks);
        // Nothing is folded where it is as wide as the strip.
        const open: TakenAway = { ok: false, absent: field };
        return found.ok && found.value.depth === ZERO ? open : mapped(found, ({ run }) => run);
      },
    }),
  ];
}

/** @param top the lines where the finished width is */
export function levelOutputs(top: Output): Output[] {
  return [...outputsAt('lower', top), ...outputsAt('edge', top)];
}
