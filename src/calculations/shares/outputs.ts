import { sharesOutputWords as words } from '#words/outputs/shares-output-words.ts';
import { type Condition, given } from '../../calculation/field-spec.ts';
import { type Outputs, outputOf, sumTaken } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { mapped } from '../../sewing/problem.ts';
import { shareOut } from '../../sewing/sharing.ts';
import { isGirth, sharesFields } from './fields.ts';
import { KEYS } from './keys.ts';
import {
  GIRTH_PLACES,
  LENGTH_PLACES,
  PLACES,
  type PlaceOf,
  placesOf,
  SHARE_FIELDS,
  type ShareAsked,
  sharesInput,
} from './read.ts';

const output = outputOf(sharesFields);
const { what, ...specs } = sharesFields.specs;

type When = { field: PlaceWhere; is: Condition };
type PlaceWhere = 'what' | (typeof GIRTH_PLACES)[number];

const WHEN: Readonly<Record<PlaceOf, readonly When[]>> = Object.fromEntries([
  ...GIRTH_PLACES.map((field) => [
    field,
    [
      { field: 'what', is: isGirth },
      { field, is: given(specs[field]) },
    ],
  ]),
  ...LENGTH_PLACES.map((field) => [field, [{ field: 'what', is: what.is('length') }]]),
]) as Readonly<Record<PlaceOf, readonly When[]>>;

/** What one of each place changes by. */
const each = PLACES.map((field) =>
  output({
    key: KEYS[field][0],
    name: words.each[field],
    kind: 'length',
    reads: SHARE_FIELDS,
    when: WHEN[field],
    step: {
      do: words.do[field],
      datum: LENGTH_PLACES.some((one) => one === field) ? 'zero' : 'stitch-line',
      stage: 'cut',
      undoable: true,
    },
    of: (fields) =>
      mapped(
        shareOut(sharesInput(fields)),
        (plan) => plan.each[at(fields, field)] ?? exactLength(0),
      ),
  }),
);

/** All of a place together, as they are changed. */
const together = PLACES.map((field, i) =>
  output({
    key: KEYS[field][1],
    name: words.all[field],
    kind: 'length',
    reads: SHARE_FIELDS,
    bentBy: each.slice(i, i + 1),
    when: WHEN[field],
    of: (fields, { made }) =>
      mapped(shareOut(sharesInput(fields)), (plan) => {
        const one = made[KEYS[field][0]] ?? plan.each[at(fields, field)] ?? 0;
        return exactLength(one * (placesOf(fields)[at(fields, field)]?.count ?? 0));
      }),
  }),
);

/** What a shared change gives: each place's part, all of them, and what none of them takes. */
export const sharesOutputs: Outputs = {
  id: 'shares',
  rule: 1,
  fields: sharesFields,
  outputs: [
    ...each,
    ...together,
    output({
      key: 'left',
      name: words.left,
      kind: 'length',
      reads: ['change'],
      takes: together,
      of: ({ change }, { takes }) => ({ ok: true, value: exactLength(change - sumTaken(takes)) }),
    }),
  ],
};

/** Which of the places that take a share it is. */
function at(fields: ShareAsked, field: PlaceOf): number {
  return placesOf(fields).findIndex((one) => one.field === field);
}
