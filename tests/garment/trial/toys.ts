import {
  choice,
  count,
  length,
  lengthOrNone,
  maybeCount,
  maybeLength,
} from '../../../src/calculation/field-spec.ts';
import { type Outputs, outputOf, type Step } from '../../../src/calculation/output.ts';
import { maybeRun } from '../../../src/calculation/run-field.ts';
import { schema } from '../../../src/calculation/schema.ts';
import { exactLength, length as units } from '../../../src/lengths/length.ts';
import { type Outcome, refused } from '../../../src/sewing/problem.ts';
import type { Run } from '../../../src/sewing/run.ts';

/*
 * Calculations with real shape for trying the garment on, where the app has none of that shape
 * yet: a piece with its edges, a hem whose turning bends its allowance, a strip of holes that are
 * kept or fitted, rows that follow another. Their arithmetic is the simplest there is.
 */

const step = (stage: Step['stage'], datum: Step['datum'] = 'zero'): Step => ({
  do: 'Make',
  datum,
  stage,
  undoable: stage !== 'cut',
});

const none = (field: string) => refused({ kind: 'too-few', field, least: 1, given: 0 });
const here = <Value>(value: Value): Outcome<Value> => ({ ok: true, value });
const size = (value: number) => here(exactLength(value));

const hemFields = (() => {
  const turned = choice({ once: 'once', twice: 'twice' });
  return schema(
    { depth: 'Depth', turned: 'Turned', turn: 'Turn', round: 'Round', above: 'Above' },
    {
      depth: length({ givesWay: true }),
      turned,
      turn: maybeLength('as deep', { when: turned.is('twice'), givesWay: true }),
      round: maybeLength('none'),
      above: maybeLength('none'),
    },
  );
})();
const hemOutput = outputOf(hemFields);
const { turned } = hemFields.specs;
const firstTurn = hemOutput({
  key: 'first-turn',
  name: 'First turn',
  kind: 'length',
  reads: ['depth', 'turn'],
  step: step('turn-up', 'raw-edge'),
  when: { field: 'turned', is: turned.is('twice') },
  of: ({ depth, turn }) => size(turn ?? depth),
});
const toyHem: Outputs = {
  id: 'toy-hem',
  rule: 1,
  fields: hemFields,
  outputs: [
    firstTurn,
    hemOutput({
      key: 'allowance',
      name: 'Allowance',
      kind: 'length',
      reads: ['depth', 'turned', 'turn'],
      bentBy: [firstTurn],
      step: step('turn-up', 'raw-edge'),
      of: ({ depth, turned, turn }, { made }) => {
        if (depth < 0) return none('depth');
        const first = turned === 'twice' ? (made['first-turn'] ?? turn ?? depth) : 0;
        return size(depth + first);
      },
    }),
    hemOutput({
      key: 'fullness',
      name: 'Fullness',
      kind: 'length',
      reads: ['round', 'above'],
      of: ({ round, above }) =>
        round === undefined || above === undefined ? none('round') : size(round - above),
    }),
  ],
};

const pieceFields = schema(
  { width: 'W', length: 'L', top: 'T', bottom: 'B', left: 'L', right: 'R', fold: 'Fold' },
  {
    width: maybeLength('none'),
    length: maybeLength('none'),
    top: lengthOrNone('none', { givesWay: true }),
    bottom: lengthOrNone('none', { givesWay: true }),
    left: lengthOrNone('none', { givesWay: true }),
    right: lengthOrNone('none', { givesWay: true }),
    fold: choice({ none: 'none', left: 'left' }),
  },
);
const pieceOutput = outputOf(pieceFields);
const cutWidth = pieceOutput({
  key: 'cut-width',
  name: 'Cut width',
  kind: 'length',
  reads: ['width', 'left', 'right', 'fold'],
  step: step('cut'),
  of: ({ width, left, right, fold }) =>
    width === undefined
      ? none('width')
      : size(width + (fold === 'left' ? 2 : 1) * right + (fold === 'left' ? 0 : left)),
});
const cutLength = pieceOutput({
  key: 'cut-length',
  name: 'Cut length',
  kind: 'length',
  reads: ['length', 'top', 'bottom'],
  step: step('cut'),
  of: ({ length, top, bottom }) =>
    length === undefined ? none('length') : size(length + top + bottom),
});
const toyPiece: Outputs = {
  id: 'toy-piece',
  rule: 1,
  fields: pieceFields,
  outputs: [
    cutWidth,
    cutLength,
    pieceOutput({
      key: 'finished-length',
      name: 'Finished length',
      kind: 'length',
      reads: ['length', 'top', 'bottom'],
      bentBy: [cutLength],
      of: ({ length, top, bottom }, { made }) => {
        const cut = made['cut-length'];
        if (cut !== undefined) return size(cut - top - bottom);
        return length === undefined ? none('length') : size(length);
      },
    }),
  ],
};

/** Holes from an end, at a pitch that is kept or fitted. */
function holes(
  f: { length: number; pitch: number; end: number; fit: 'keep' | 'fill' },
  cut: number | undefined,
  kept: number | undefined,
): Outcome<Run> {
  const long = cut ?? f.length;
  const room = long - 2 * f.end;
  if (!(f.pitch > 0 && room >= 0)) return none('pitch');
  const steps =
    f.fit === 'fill' ? Math.max(1, Math.round(room / f.pitch)) : Math.floor(room / f.pitch);
  const n = kept ?? steps + 1;
  if (n < 1 || n > 3000 || (n > 1 && room === 0)) return none('pitch');
  const by = n === 1 ? 0 : f.fit === 'fill' ? room / (n - 1) : f.pitch;
  const marks = Array.from({ length: n }, (_, i) => ({
    at: exactLength(f.end + i * by),
    label: String(i + 1),
    kind: 'hole' as const,
  }));
  return here({ datum: 'cut-end', length: units(Math.ceil(long)), marks });
}

const stripFields = (() => {
  const rows = choice({ one: 'one', two: 'two' });
  return schema(
    { length: 'L', pitch: 'P', end: 'E', fit: 'F', rows: 'R' },
    {
      length: length({}),
      pitch: length({}),
      end: length({ givesWay: true }),
      fit: choice({ keep: 'keep', fill: 'fill' }),
      rows,
    },
  );
})();
const stripOutput = outputOf(stripFields);
const twoRows = stripFields.specs.rows.is('two');
const cutStrip = stripOutput({
  key: 'cut',
  name: 'Cut',
  kind: 'length',
  reads: ['length'],
  adds: true,
  step: step('cut'),
  of: ({ length }) => size(length),
});
const row = {
  kind: 'run',
  reads: ['length', 'pitch', 'end', 'fit'],
  bentBy: [cutStrip],
  decides: ['pitch', 'fit'],
} as const;
const firstRow = stripOutput({
  ...row,
  key: 'holes',
  name: 'Holes',
  step: step('edge', 'cut-end'),
  of: (f, { made, count }) => holes(f, made.cut, count),
});
const secondRow = stripOutput({
  ...row,
  key: 'holes-2',
  name: 'Holes of the second row',
  step: step('edge', 'cut-end'),
  when: { field: 'rows', is: twoRows },
  of: (f, { made, count }) => holes({ ...f, end: f.end + f.pitch / 4 }, made.cut, count),
});
const marksIn = (value: unknown) => (value as Run).marks;
const toyStrip: Outputs = {
  id: 'toy-strip',
  rule: 1,
  fields: stripFields,
  outputs: [
    cutStrip,
    firstRow,
    secondRow,
    stripOutput({
      key: 'count',
      name: 'How many',
      kind: 'count',
      reads: [],
      takes: [firstRow],
      adds: true,
      of: (_, { takes }) => here(marksIn(takes.holes).length),
    }),
    stripOutput({
      key: 'last',
      name: 'Last',
      kind: 'length',
      reads: [],
      takes: [firstRow],
      of: (_, { takes }) => size(marksIn(takes.holes).at(-1)?.at ?? 0),
    }),
  ],
};

const followFields = schema(
  { row: 'Row', by: 'By' },
  { row: maybeRun('none'), by: lengthOrNone('none') },
);
const followOutput = outputOf(followFields);
const follows = followOutput({
  key: 'marks',
  name: 'Marks',
  kind: 'run',
  reads: ['row', 'by'],
  decides: ['row'],
  step: step('close'),
  of: ({ row, by }) => {
    if (!row) return none('row');
    const marks = row.marks.map((mark) => ({ ...mark, at: exactLength(mark.at + by) }));
    return here({ ...row, length: units(row.length + by), marks });
  },
});
const toyFollow: Outputs = {
  id: 'toy-follow',
  rule: 1,
  fields: followFields,
  outputs: [
    follows,
    followOutput({
      key: 'count',
      name: 'How many',
      kind: 'count',
      reads: [],
      takes: [follows],
      adds: true,
      of: (_, { takes }) => here(marksIn(takes.marks).length),
    }),
  ],
};

const laceFields = schema(
  { holes: 'H', gap: 'G', tails: 'T', rounds: 'R' },
  {
    holes: count({}),
    gap: length({}),
    tails: lengthOrNone('none', { givesWay: true }),
    rounds: maybeCount('one'),
  },
);
const laceOutput = outputOf(laceFields);
const toyLace: Outputs = {
  id: 'toy-lace',
  rule: 1,
  fields: laceFields,
  outputs: [
    laceOutput({
      key: 'lace',
      name: 'Lace',
      kind: 'length',
      reads: ['holes', 'gap', 'tails', 'rounds'],
      adds: true,
      step: step('edge'),
      of: (given) => {
        const { holes, gap, tails, rounds = 1 } = given;
        return holes < 2 ? none('holes') : size((holes - 1) * gap * rounds + 2 * tails);
      },
    }),
  ],
};

export const TOYS: readonly Outputs[] = [toyHem, toyPiece, toyStrip, toyFollow, toyLace];
