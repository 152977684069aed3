import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords } from '#words/common/turned-words.ts';
import { facingOutputWords as words } from '#words/outputs/facing-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { type MadeSteps, type Outputs, outputOf } from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import {
  type Facing,
  type FacingInput,
  facedHem,
  facingLength,
} from '../../sewing/hems/hem-facing.ts';
import { type FacingStands, facingAsMade } from '../../sewing/hems/hem-facing-made.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { type FacingAsked, facingFields } from './fields.ts';

const output = outputOf(facingFields);
const { kind, radius, edge } = facingFields.specs;

/** What the facing takes is asked before the piece is cut: the cloth there is, is the seam's own. */
const CUT_FIELDS = ['depth', 'seam', 'turn', 'thickness'] as const;
type Asked = Pick<FacingAsked, (typeof CUT_FIELDS)[number]> &
  Partial<Pick<FacingAsked, 'edgeStitch' | 'left' | 'radius'>>;

const turnUp = { datum: 'raw-edge', stage: 'turn-up', undoable: true } as const;

const facingLong = output({
  key: 'facing-long',
  name: words.facingLong,
  kind: 'length',
  bound: 'least',
  reads: ['edge', 'seam'],
  when: { field: 'edge', is: given(edge) },
  adds: true,
  of: ({ edge: along = ZERO, seam: atEnds }) => facingLength(along, atEnds),
});

const facingDeep = output({
  key: 'facing-deep',
  name: words.facingDeep,
  kind: 'length',
  reads: CUT_FIELDS,
  material: { kind: 'strip', edge: true, along: facingLong },
  step: {
    do: words.cut,
    datum: 'cut-end',
    stage: 'cut',
    undoable: false,
    bound: 'least',
    caution: cautionWords.blades,
  },
  of: (fields) => mapped(facedHem(inputOf(fields)), ({ cutDeep }) => cutDeep),
});

const seam = output({
  key: 'seam',
  name: words.seam,
  kind: 'length',
  reads: [...CUT_FIELDS, 'left'],
  step: { do: words.sewOn, ...turnUp },
  of: (fields) => mapped(facedHem(inputOf(fields)), () => fields.seam),
});

const freeEdge = output({
  key: 'free-edge',
  name: words.freeEdge,
  kind: 'length',
  reads: CUT_FIELDS,
  step: { do: words.press, ...turnUp, caution: turnedWords.iron(IRON_ONE_DOT.value) },
  of: (fields) =>
    fields.turn === ZERO
      ? { ok: false, absent: 'turn' }
      : mapped(facedHem(inputOf(fields)), () => fields.turn),
});

const bentBy = [facingDeep, seam, freeEdge];

/** What a faced hem gives: what it takes of its piece, how deep the facing is cut, its seam and its stitching. */
export const facingOutputs: Outputs = {
  id: 'facing',
  rule: 1,
  fields: facingFields,
  outputs: [
    facingLong,
    facingDeep,
    seam,
    freeEdge,
    output({
      key: 'stitch',
      name: words.stitch,
      kind: 'length',
      reads: [...CUT_FIELDS, 'left', 'edgeStitch'],
      // A seam sewn deeper takes as much of the piece as of the facing: the stitching stays.
      bentBy: [facingDeep, freeEdge],
      step: { do: words.sew, ...turnUp },
      of: (fields, { made }) => mapped(stands(fields, made), ({ stitch }) => stitch),
    }),
    output({
      key: 'stitch-up',
      name: words.stitchUp,
      kind: 'length',
      bound: 'most',
      reads: [...CUT_FIELDS, 'left', 'edgeStitch'],
      bentBy,
      of: (fields, { made }) => mapped(stands(fields, made), ({ stitchUp }) => stitchUp),
    }),
    output({
      key: 'allowance',
      name: words.allowance,
      kind: 'length',
      edge: true,
      reads: CUT_FIELDS,
      bentBy: [seam],
      of: (fields, { made }) => mapped(stands(fields, made), ({ allowance }) => allowance),
    }),
    output({
      key: 'depth',
      name: words.depth,
      kind: 'length',
      reads: CUT_FIELDS,
      bentBy,
      of: (fields, { made }) => mapped(stands(fields, made), ({ depth }) => depth),
    }),
    output({
      key: 'gives',
      name: words.gives,
      kind: 'number',
      reads: [...CUT_FIELDS, 'radius'],
      when: [
        { field: 'kind', is: kind.is('bias') },
        { field: 'radius', is: given(radius) },
      ],
      of: (fields) => mapped(facedHem(inputOf(fields)), ({ gives = 0 }) => 100 * gives),
    }),
  ],
};

/** Stitched at its free edge where that isn't asked. */
function inputOf({ edgeStitch = ZERO, ...fields }: Asked): FacingInput {
  return { ...fields, edgeStitch };
}

/** The faced hem, by what is made of it. */
function stands(fields: Asked, made: MadeSteps): Outcome<FacingStands> {
  const input = inputOf(fields);
  const what = { cutDeep: made['facing-deep'], seam: made.seam, turn: made['free-edge'] };
  return mapped(facedHem(input), (plan: Facing) => facingAsMade(plan, input, what));
}
