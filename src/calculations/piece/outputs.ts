import { cautionWords } from '#words/common/caution-words.ts';
import { pieceOutputWords as words } from '#words/outputs/piece-output-words.ts';
import { either, given, not } from '../../calculation/field-spec.ts';
import { type Comes, type Outputs, outputOf, type Step } from '../../calculation/output.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { mustBeCount } from '../../sewing/length-checks.ts';
import {
  isLevel,
  longestOf,
  type Piece,
  rawCorner,
  type Sized,
  sizedAlong,
  widestOf,
} from '../../sewing/pieces/piece.ts';
import { beyondOf, isUpright } from '../../sewing/pieces/piece-input.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import {
  CORNER_FIELDS,
  LENGTH_FIELDS,
  LENGTH_READS,
  type PieceAsked,
  pieceFields,
  pieceInput,
  WIDTH_FIELDS,
  WIDTH_READS,
  wasCut,
} from './fields.ts';
import { MOST_PIECES } from './read.ts';
import { onFold, slanted as slantsOwn } from './sides.ts';

const output = outputOf(pieceFields);
const { width, length, wantedWidth, wantedLength } = pieceFields.specs;

const ofWidth = { reads: WIDTH_FIELDS, readsIf: WIDTH_READS } as const;
const ofLength = { reads: LENGTH_FIELDS, readsIf: LENGTH_READS } as const;
const wide = { field: 'width', is: given(width) } as const;
const long = { field: 'length', is: given(length) } as const;
/** A corner is given by its angle. */
const byCorner = { field: 'slants', is: not(slantsOwn) } as const;
const toCut = { field: 'given', is: not(wasCut) } as const;

const cut: Omit<Step, 'do'> = {
  datum: 'cut-end',
  stage: 'cut',
  undoable: false,
  bound: 'least',
  caution: cautionWords.shears,
};

type Some<Fields extends readonly (keyof PieceAsked)[]> = Pick<PieceAsked, Fields[number]>;
type WidthAsked = Some<typeof WIDTH_FIELDS>;
type LengthAsked = Some<typeof LENGTH_FIELDS>;

const across = (fields: WidthAsked): Outcome<Sized> => sizedAlong(pieceInput(fields), 'width');
const along = (fields: LengthAsked): Outcome<Sized> => sizedAlong(pieceInput(fields), 'length');

const cutWidth = output({
  key: 'cut-width',
  name: words.cutWidth,
  kind: 'length',
  ...ofWidth,
  when: [wide, toCut],
  step: { do: words.cutWide, ...cut },
  of: (fields) => mapped(across(fields), (way) => way.cut),
});

const cutLength = output({
  key: 'cut-length',
  name: words.cutLength,
  kind: 'length',
  ...ofLength,
  when: [long, toCut],
  step: { do: words.cutLong, ...cut },
  of: (fields) => mapped(along(fields), (way) => way.cut),
});

const ALL_FIELDS = [...new Set([...WIDTH_FIELDS, ...LENGTH_FIELDS])];

/** Opened, where it is widest: cloth that is narrower doesn’t take it. */
const whole = output({
  key: 'across',
  name: words.across,
  kind: 'length',
  bound: 'least',
  reads: ALL_FIELDS,
  bentBy: [cutWidth],
  when: wide,
  of: (fields, { made }) => widest(fields, made[cutWidth.key]),
});

/** Along the grain, from its highest to its lowest place. */
const tall = output({
  key: 'along',
  name: words.along,
  kind: 'length',
  bound: 'least',
  reads: ALL_FIELDS,
  bentBy: [cutLength],
  when: long,
  of: (fields, { made }) => longest(fields, made[cutLength.key]),
});

/** What a piece gives: what is cut, what that gives finished, as cut where it is cut, and what it lacks. */
export const pieceOutputs: Outputs = {
  id: 'piece',
  rule: 1,
  fields: pieceFields,
  outputs: [
    cutWidth,
    cutLength,
    output({
      key: 'gives-width',
      name: words.givesWidth,
      kind: 'length',
      ...ofWidth,
      bentBy: [cutWidth],
      when: wide,
      of: (fields, { made }) => mapped(across(fields), (way) => stands(way, made[cutWidth.key])),
    }),
    output({
      key: 'gives-length',
      name: words.givesLength,
      kind: 'length',
      ...ofLength,
      bentBy: [cutLength],
      when: long,
      of: (fields, { made }) => mapped(along(fields), (way) => stands(way, made[cutLength.key])),
    }),
    output({
      key: 'gives-width-all',
      name: words.givesWidthAll,
      kind: 'length',
      ...ofWidth,
      reads: [...WIDTH_FIELDS, 'count', 'pairs'],
      bentBy: [cutWidth],
      when: wide,
      adds: true,
      of: (fields, { made }) =>
        answerUnless(mustBeCount('count', fields.count, 1, MOST_PIECES), () =>
          mapped(across(fields), (way) =>
            exactLength(manyOf(fields) * stands(way, made[cutWidth.key])),
          ),
        ),
    }),
    output({
      key: 'lacks-width',
      name: words.lacksWidth,
      kind: 'length',
      bound: 'least',
      ...ofWidth,
      reads: [...WIDTH_FIELDS, 'wantedWidth'],
      bentBy: [cutWidth],
      when: [wide, { field: 'wantedWidth', is: either(not(wasCut), given(wantedWidth)) }],
      of: (fields, { made }) =>
        lacking(across(fields), made[cutWidth.key], fields.wantedWidth ?? fields.width),
    }),
    output({
      key: 'lacks-length',
      name: words.lacksLength,
      kind: 'length',
      bound: 'least',
      ...ofLength,
      reads: [...LENGTH_FIELDS, 'wantedLength'],
      bentBy: [cutLength],
      when: [long, { field: 'wantedLength', is: either(not(wasCut), given(wantedLength)) }],
      of: (fields, { made }) =>
        lacking(along(fields), made[cutLength.key], fields.wantedLength ?? fields.length),
    }),
    whole,
    tall,
    output({
      key: 'corner-bottom',
      name: words.cornerBottom,
      kind: 'length',
      reads: CORNER_FIELDS,
      when: byCorner,
      of: (fields) => slanted(fields, ({ alongBottom }) => alongBottom),
    }),
    output({
      key: 'corner-side',
      name: words.cornerSide,
      kind: 'length',
      reads: CORNER_FIELDS,
      when: byCorner,
      of: (fields) => slanted(fields, ({ alongSide }) => alongSide),
    }),
    output({
      key: 'count',
      name: words.count,
      kind: 'count',
      reads: ['count', 'pairs'],
      adds: true,
      material: {
        ...{ kind: 'cloth', along: tall, across: whole, fold: onFold, unless: wasCut },
        edges: (fields) => beyondOf(pieceInput(fields as Some<typeof ALL_FIELDS>)),
      },
      of: (fields) =>
        answerUnless(mustBeCount('count', fields.count, 1, MOST_PIECES), () => ({
          ok: true,
          value: manyOf(fields),
        })),
    }),
  ],
};

/** How many pieces: of each pair two. */
function manyOf({ count, pairs }: Pick<PieceAsked, 'count' | 'pairs'>): number {
  return pairs === 'pairs' ? 2 * count : count;
}

/** What it gives finished, as it was cut where it is. */
function stands(way: Sized, made: ExactLength | undefined): ExactLength {
  return made === undefined ? way.gives : way.givenBy(made);
}

/** What it gives less than is wanted; less than nothing where it gives more. */
function lacking(
  way: Outcome<Sized>,
  made: ExactLength | undefined,
  wanted: ExactLength | undefined,
): Comes<ExactLength> {
  if (wanted === undefined) return { ok: false, absent: 'wantedWidth' };
  return mapped(way, (sized) => exactLength(wanted - stands(sized, made)));
}

/** Sides that slant make it as wide as its length lets them. */
function widest(
  fields: Some<typeof ALL_FIELDS>,
  made: ExactLength | undefined,
): Comes<ExactLength> {
  const way = across(fields);
  if (!way.ok) return way;
  const input = pieceInput(fields);
  if (!isUpright(input) && fields.length === undefined) return { ok: false, absent: 'length' };
  const { times, cut: planned } = way.value;
  const more = made === undefined ? 0 : times * (made - planned);
  return mapped(widestOf(input), (found) => exactLength(found + more));
}

/** A slanted top or bottom reaches as far as its width lets it. */
function longest(
  fields: Some<typeof ALL_FIELDS>,
  made: ExactLength | undefined,
): Comes<ExactLength> {
  const way = along(fields);
  if (!way.ok) return way;
  const input = pieceInput(fields);
  if (!isLevel(input) && fields.width === undefined) return { ok: false, absent: 'width' };
  const more = made === undefined ? 0 : made - way.value.cut;
  return mapped(longestOf(input), (found) => exactLength(found + more));
}

/** Square corners are where the two raw edges meet: there is nothing to mark. */
function slanted(
  fields: Some<typeof CORNER_FIELDS>,
  which: (corner: Piece['corner']) => ExactLength,
): Comes<ExactLength> {
  if (fields.angle === 90) return { ok: false, absent: 'angle' };
  return mapped(rawCorner(pieceInput({ ...fields, given: 'finished' })), which);
}
