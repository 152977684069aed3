import { cautionWords } from '#words/common/caution-words.ts';
import { circleOutputWords as words } from '#words/outputs/circle-output-words.ts';
import { type Comes, type Outputs, outputOf } from '../../calculation/output.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { type Circle, circle, roundOf } from '../../sewing/shaping/circle.ts';
import { straightSide } from '../../sewing/shaping/sector.ts';
import { type CircleAsked, circleFields, circleInput, SHAPE_FIELDS, what } from './fields.ts';

const output = outputOf(circleFields);

type Fields = Pick<CircleAsked, (typeof SHAPE_FIELDS)[number]>;

const planOf = (fields: Fields): Outcome<Circle> => circle(circleInput(fields));
const asked = { reads: SHAPE_FIELDS } as const;
const see =
  (of: (plan: Circle) => ExactLength) =>
  (fields: Fields): Comes<ExactLength> =>
    mapped(planOf(fields), of);
const cutting = { stage: 'cut', undoable: false, caution: cautionWords.shears } as const;

const cutHem = output({
  ...asked,
  key: 'cut-hem',
  name: words.cutHem,
  kind: 'length',
  step: { do: words.strikeHem, datum: 'zero', bound: 'least', ...cutting },
  of: see((plan) => plan.cutHem),
});

const cutRadius = output({
  ...asked,
  key: 'cut-radius',
  name: words.cutRadius,
  kind: 'length',
  step: { do: words.strikeEdge, datum: 'zero', bound: 'most', ...cutting },
  of: see((plan) => plan.cutRadius),
});

const wide = output({
  ...asked,
  key: 'wide',
  name: words.wide,
  kind: 'length',
  bound: 'least',
  of: see((plan) => plan.box.wide),
});

const high = output({
  ...asked,
  key: 'high',
  name: words.high,
  kind: 'length',
  bound: 'least',
  of: see((plan) => plan.box.high),
});

/** What circular pieces give: two radii, and what comes of them all round. */
export const circleOutputs: Outputs = {
  id: 'circle',
  rule: 1,
  fields: circleFields,
  outputs: [
    cutHem,
    cutRadius,
    output({
      ...asked,
      key: 'radius',
      name: words.radius,
      kind: 'length',
      of: see((plan) => plan.piece.inner),
    }),
    output({
      ...asked,
      key: 'edge',
      name: words.edge,
      kind: 'length',
      bentBy: [cutRadius],
      step: {
        do: words.stay,
        datum: 'zero',
        stage: 'join',
        undoable: true,
        caution: cautionWords.pins,
      },
      of: (fields, { made }) =>
        mapped(planOf(fields), (plan) => {
          const cut = made[cutRadius.key];
          return cut === undefined ? plan.edge : roundOf(plan, exactLength(cut + fields.seam));
        }),
    }),
    output({
      ...asked,
      key: 'cut-edge',
      name: words.cutEdge,
      kind: 'length',
      of: see((plan) => plan.cutEdge),
    }),
    output({
      ...asked,
      key: 'hem-line',
      name: words.hemLine,
      kind: 'length',
      bentBy: [cutHem],
      of: (fields, { made }) =>
        mapped(planOf(fields), (plan) => {
          const cut = made[cutHem.key];
          return cut === undefined ? plan.hemLine : roundOf(plan, exactLength(cut - fields.hem));
        }),
    }),
    output({
      ...asked,
      key: 'hem',
      name: words.hem,
      kind: 'length',
      step: {
        do: words.level,
        datum: 'raw-edge',
        stage: 'turn-up',
        undoable: true,
        caution: words.hangs,
      },
      of: (fields) =>
        fields.hem === ZERO
          ? { ok: false, absent: 'hem' }
          : mapped(planOf(fields), () => fields.hem),
    }),
    wide,
    high,
    output({
      ...asked,
      key: 'pieces',
      name: words.pieces,
      kind: 'count',
      adds: true,
      material: { kind: 'cloth', along: high, across: wide },
      of: (fields) => mapped(planOf(fields), ({ pieces }) => pieces),
    }),
    output({
      ...asked,
      key: 'angle',
      name: words.angle,
      kind: 'number',
      of: (fields) => mapped(planOf(fields), ({ piece }) => (piece.angle * 180) / Math.PI),
    }),
    output({
      ...asked,
      key: 'full',
      name: words.full,
      kind: 'number',
      of: (fields) => mapped(planOf(fields), ({ hemLine, edge }) => hemLine / edge),
    }),
    output({
      ...asked,
      key: 'side',
      name: words.side,
      kind: 'length',
      when: { field: 'what', is: what.is('gores') },
      of: (fields) => mapped(planOf(fields), ({ piece }) => straightSide(piece)),
    }),
  ],
};
