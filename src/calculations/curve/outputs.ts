import { curveWords } from '#words/calculations/curve-words.ts';
import { curveOutputWords as words } from '#words/outputs/curve-output-words.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { offGrain } from '../../sewing/cloth/grain.ts';
import { arcOf, slantedEdge } from '../../sewing/pieces/curve.ts';
import { walkedCurve } from '../../sewing/pieces/walked.ts';
import { mapped } from '../../sewing/problem.ts';
import {
  ARC_FIELDS,
  arcInput,
  curveFields,
  GRAIN_FIELDS,
  grainInput,
  kind,
  SLANT_FIELDS,
  SQUARE_FIELDS,
  slantInput,
  WALK_FIELDS,
  walkInput,
} from './fields.ts';
import { grainOf, squareOf } from './worked.ts';

const output = outputOf(curveFields);
const ofArc = { reads: ARC_FIELDS, when: { field: 'kind', is: kind.is('arc') } } as const;
const ofWalk = { reads: WALK_FIELDS, when: { field: 'kind', is: kind.is('walk') } } as const;
const ofGrain = { reads: GRAIN_FIELDS, when: { field: 'kind', is: kind.is('grain') } } as const;
const ofSquare = { reads: SQUARE_FIELDS, when: { field: 'kind', is: kind.is('square') } } as const;

/** What curves, slants and cut ends give. */
export const curveOutputs: Outputs = {
  id: 'curve',
  rule: 1,
  fields: curveFields,
  outputs: [
    output({
      key: 'wanted',
      name: words.wanted,
      kind: 'length',
      ...ofSquare,
      step: {
        do: words.pull,
        datum: 'raw-corner',
        stage: 'measure',
        undoable: true,
        caution: curveWords.before,
      },
      of: (fields) => mapped(squareOf(fields), ({ wanted }) => wanted),
    }),
    output({
      key: 'skew',
      name: words.skew,
      kind: 'length',
      ...ofSquare,
      of: (fields) => mapped(squareOf(fields), ({ skew }) => exactLength(Math.abs(skew))),
    }),
    output({
      key: 'usable',
      name: words.usable,
      kind: 'length',
      bound: 'most',
      ...ofSquare,
      of: (fields) => mapped(squareOf(fields), ({ usable }) => usable),
    }),
    output({
      key: 'bowed',
      name: words.bowed,
      kind: 'number',
      ...ofGrain,
      of: (fields) => mapped(offGrain(grainInput(fields)), ({ bow }) => bow),
    }),
    output({
      key: 'askew',
      name: words.askew,
      kind: 'number',
      ...ofGrain,
      of: (fields) => mapped(offGrain(grainInput(fields)), ({ skew }) => skew),
    }),
    output({
      key: 'lift',
      name: words.lift,
      kind: 'length',
      ...ofGrain,
      reads: [...GRAIN_FIELDS, 'over'],
      of: (fields) => mapped(grainOf(fields), ({ lift }) => lift),
    }),
    output({
      key: 'slant',
      name: words.slant,
      kind: 'length',
      reads: SLANT_FIELDS,
      when: { field: 'kind', is: kind.is('slant') },
      step: { do: words.markSlant, datum: 'zero', stage: 'cut', undoable: true },
      of: (fields) => {
        const { high, aside } = slantInput(fields);
        return slantedEdge(high, aside);
      },
    }),
    output({
      key: 'line',
      name: words.line,
      kind: 'length',
      ...ofArc,
      of: (fields) => mapped(arcOf(arcInput(fields)), ({ line }) => line),
    }),
    output({
      key: 'edge',
      name: words.edge,
      kind: 'length',
      ...ofArc,
      of: (fields) => mapped(arcOf(arcInput(fields)), ({ edge }) => edge),
    }),
    output({
      key: 'radius',
      name: words.radius,
      kind: 'length',
      ...ofArc,
      of: (fields) => mapped(arcOf(arcInput(fields)), ({ radius }) => radius),
    }),
    output({
      key: 'walked',
      name: words.walked,
      kind: 'length',
      ...ofWalk,
      of: (fields) => mapped(walkedCurve(walkInput(fields)), ({ walked }) => walked),
    }),
    output({
      key: 'walked-line',
      name: words.walkedLine,
      kind: 'length',
      ...ofWalk,
      of: (fields) => {
        const walk = walkedCurve(walkInput(fields));
        if (!walk.ok) return walk;
        const { line } = walk.value;
        return line === undefined ? { ok: false, absent: 'walkRadius' } : { ok: true, value: line };
      },
    }),
    output({
      key: 'walk-marks',
      name: words.walkMarks,
      kind: 'run',
      ...ofWalk,
      decides: ['parts'],
      step: { do: words.walk, datum: 'zero', stage: 'join', undoable: true },
      of: (fields, { count }) => mapped(walkedCurve(walkInput(fields, count)), ({ run }) => run),
    }),
    output({
      key: 'marks',
      name: words.marks,
      kind: 'run',
      ...ofArc,
      decides: ['parts'],
      step: { do: words.mark, datum: 'zero', stage: 'join', undoable: true },
      of: (fields, { count }) => mapped(arcOf(arcInput(fields, count)), ({ run }) => run),
    }),
  ],
};
