import { pocketWords } from '#words/calculations/pocket-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { pocketOutputWords as words } from '#words/outputs/pocket-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Comes, type Outputs, outputOf } from '../../calculation/output.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { handOpening, pocketAt } from '../../sewing/bands/pocket.ts';
import { mustBePositive, mustNotBeNegative } from '../../sewing/length-checks.ts';
import { answerUnless, mapped } from '../../sewing/problem.ts';
import { cutOutputs } from './cut-outputs.ts';
import { kind, PLACE_FIELDS, type PocketAsked, placeInput, pocketFields } from './fields.ts';

const output = outputOf(pocketFields);
const onFront = { when: { field: 'kind', is: kind.is('patch', 'slash') } } as const;
const marked = { stage: 'join', undoable: true } as const;

type Placed = Pick<PocketAsked, (typeof PLACE_FIELDS)[number]>;

const near = output({
  key: 'near',
  name: words.near,
  kind: 'length',
  reads: PLACE_FIELDS,
  ...onFront,
  step: { do: words.markNear, datum: 'centre-line', ...marked, caution: cautionWords.pins },
  of: (fields) => mapped(pocketAt(placeInput(fields)), (at) => at.near),
});

const down = output({
  key: 'down',
  name: words.down,
  kind: 'length',
  reads: ['down'],
  step: { do: words.markDown, datum: 'stitch-line', ...marked },
  of: (fields) =>
    answerUnless(mustNotBeNegative('down', fields.down), () => ({ ok: true, value: fields.down })),
});

/** The level of the farther end, of what slants. */
function downFarOf(fields: Placed, made: ExactLength | undefined): Comes<ExactLength> {
  if ((fields.slant ?? ZERO) === 0) return { ok: false, absent: 'slant' };
  const shift = made === undefined ? 0 : made - fields.down;
  return mapped(pocketAt(placeInput(fields)), ({ downFar }) => exactLength(downFar + shift));
}

/** What a pocket gives: what is cut, its place from the centre and the waist, and the hand it takes. */
export const pocketOutputs: Outputs = {
  id: 'pocket',
  rule: 1,
  fields: pocketFields,
  outputs: [
    ...cutOutputs,
    near,
    output({
      key: 'far',
      name: words.far,
      kind: 'length',
      reads: PLACE_FIELDS,
      ...onFront,
      bentBy: [near],
      step: { do: words.markFar, datum: 'centre-line', ...marked },
      of: (fields, { made }) =>
        mapped(pocketAt(placeInput(fields)), (at) =>
          exactLength(at.far + (made[near.key] ?? at.near) - at.near),
        ),
    }),
    down,
    output({
      key: 'down-far',
      name: words.downFar,
      kind: 'length',
      reads: PLACE_FIELDS,
      ...onFront,
      bentBy: [down],
      step: { do: words.markDownFar, datum: 'stitch-line', ...marked },
      of: (fields, { made }) => downFarOf(fields, made[down.key]),
    }),
    output({
      key: 'ends',
      name: words.ends,
      kind: 'length',
      reads: ['width', 'down'],
      when: { field: 'kind', is: kind.is('seam') },
      bentBy: [down],
      step: { do: words.markEnds, datum: 'stitch-line', ...marked },
      of: (fields, { made }) => {
        const { width } = fields;
        const problems = [
          ...mustBePositive('width', width),
          ...mustNotBeNegative('down', fields.down),
        ];
        return answerUnless(problems, () => ({
          ok: true,
          value: exactLength((made[down.key] ?? fields.down) + width),
        }));
      },
    }),
    output({
      key: 'slit',
      name: words.slit,
      kind: 'length',
      reads: ['width'],
      when: { field: 'kind', is: kind.is('slash') },
      step: {
        do: words.cutSlit,
        datum: 'cut-end',
        stage: 'join',
        undoable: false,
        caution: pocketWords.slashLast,
      },
      of: ({ width }) =>
        answerUnless(mustBePositive('width', width), () => ({ ok: true, value: width })),
    }),
    output({
      key: 'hand',
      name: words.hand,
      kind: 'length',
      bound: 'least',
      reads: ['hand', 'ease'],
      when: { field: 'hand', is: given(pocketFields.specs.hand) },
      of: ({ hand, ease }) =>
        mapped(handOpening(hand, ease ?? ZERO), (least) => needed({ least }).least),
    }),
  ],
};
