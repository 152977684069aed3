import { hemOutputWords as words } from '#words/outputs/hem-output-words.ts';
import { outputOf, type TakenAway } from '../../calculation/output.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { type CurvedHem, curvedHem } from '../../sewing/hems/hem-curve.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { hemFields } from './fields.ts';
import {
  apartOf,
  asGiven,
  CURVE_FIELDS,
  type CurveAsked,
  curveOf,
  easeOf,
  type HemAsked,
  hemInput,
  TURN_FIELDS,
} from './read.ts';

const output = outputOf(hemFields);
const { shape } = hemFields.specs;

const reads = [...TURN_FIELDS, ...CURVE_FIELDS] as const;
const curved = { field: 'shape', is: shape.is('rise', 'readings', 'inward') } as const;

/** What a curved hem line does to the edge that is turned up on it; losing less than nothing is gaining. */
export const curveOutputs = [
  output({
    key: 'radius',
    name: words.radius,
    kind: 'length',
    reads,
    when: curved,
    of: (fields) => there(curve(fields, 0), fields, ({ radius }) => radius),
  }),
  output({
    key: 'fullness',
    name: words.fullness,
    kind: 'number',
    reads,
    when: curved,
    of: (fields) =>
      mapped(curve(fields, 0), ({ fullness, inward }) => signed(100 * fullness, inward)),
  }),
  output({
    key: 'excess',
    name: words.excess,
    kind: 'length',
    reads,
    // Only there the length of the whole hem line is known.
    when: { field: 'shape', is: shape.is('readings') },
    of: (fields) =>
      there(curve(fields, 0), fields, ({ excess, inward }) =>
        excess === undefined ? undefined : exactLength(signed(excess, inward)),
      ),
  }),
  output({
    key: 'deepest',
    name: words.deepest,
    kind: 'length',
    bound: 'most',
    reads: [...reads, 'cloth', 'ease'],
    when: { field: 'shape', is: shape.is('rise', 'readings') },
    of: (fields) => there(curve(fields, easeOf(fields)), fields, ({ deepest }) => deepest),
  }),
];

type Asked = HemAsked & CurveAsked;

function curve(fields: Asked, ease: number): Outcome<CurvedHem> {
  const input = hemInput(fields);
  if (!input.ok) return input;
  const { depth } = input.value;
  const given = curveOf(fields, apartOf(fields, depth));
  if (!given) throw new Error('a straight hem line has no curve');
  const curved = curvedHem(depth, given, ease);
  return curved.ok ? curved : asGiven(curved, input.value, fields);
}

/** One of its numbers; a hem line as good as straight, or curved inward, has not all of them. */
function there(
  curve: Outcome<CurvedHem>,
  { shape }: Asked,
  which: (curve: CurvedHem) => ExactLength | undefined,
): Outcome<ExactLength> | TakenAway {
  if (!curve.ok) return curve;
  const value = which(curve.value);
  if (value !== undefined) return { ok: true, value };
  return { ok: false, absent: shape === 'readings' ? 'above' : 'rise' };
}

function signed(size: number, inward: boolean): number {
  return inward ? -size : size;
}
