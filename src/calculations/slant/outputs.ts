import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { slantOutputWords as words } from '#words/outputs/slant-output-words.ts';
import { type Comes, type Output, type Outputs, outputOf } from '../../calculation/output.ts';
import { type ExactLength, ZERO } from '../../lengths/length.ts';
import { type Slanted, slantedHem } from '../../sewing/hems/slanted-hem.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { SLANT_FIELDS, type SlantAsked, slantFields, slantInput } from './fields.ts';

const output = outputOf(slantFields);
const { given, pair } = slantFields.specs;
const asked = { kind: 'length', reads: SLANT_FIELDS } as const;
const press = {
  datum: 'raw-edge',
  stage: 'turn-up',
  undoable: true,
  caution: turned.iron(IRON_ONE_DOT.value),
} as const;
const cut = {
  stage: 'cut',
  undoable: false,
  caution: turned.tryOn,
} as const;

/** Each piece: what its keys end with, and when it is there. */
const EACH = [
  {
    at: 0,
    end: '',
    of: (one: string) => one,
    when: [],
    there: { one: 'thereOne', other: 'thereOther' },
  },
  {
    at: 1,
    end: '-second',
    of: words.second,
    when: [{ field: 'pair', is: pair.is('own') }],
    there: { one: 'secondThereOne', other: 'secondThereOther' },
  },
] as const;

/** How long each side is cut, or what of the cloth that is there comes off. */
const raw: readonly Output[] = EACH.flatMap(({ at, end, of, when, there }) =>
  (['one', 'other'] as const).flatMap((side) => [
    output({
      ...asked,
      key: `cut-${side}${end}`,
      name: of(words.cut[side]),
      when: [{ field: 'given', is: given.is('depth') }, ...when],
      step: { ...cut, do: of(words.cutSide[side]), datum: 'zero', bound: 'least' },
      of: (fields) => ofPiece(fields, at, (piece) => piece.cut[side]),
    }),
    output({
      ...asked,
      key: `trim-${side}${end}`,
      name: of(words.trim[side]),
      when: [{ field: 'given', is: given.is('cloth') }, ...when],
      step: { ...cut, do: of(words.trimSide[side]), datum: 'raw-edge', bound: 'most' },
      of: (fields) =>
        unlessNothing(
          ofPiece(fields, at, (piece) => piece.trims?.[side] ?? ZERO),
          there[side],
        ),
    }),
  ]),
);

/** Where the sides of the allowance turn; a straight hem has no mirror to cut. */
const mirrors: readonly Output[] = EACH.flatMap(({ at, end, of, when }) => [
  output({
    ...asked,
    key: `mirror-down${end}`,
    name: of(words.down),
    when: [...when],
    step: { do: of(words.markDown), datum: 'fold', stage: 'cut', undoable: true },
    of: (fields) => ofMirror(fields, at, ({ down }) => down),
  }),
  output({
    ...asked,
    key: `mirror${end}`,
    name: of(words.mirror),
    when: [...when],
    step: {
      ...{ do: of(words.cutMirror), datum: 'zero', stage: 'cut', undoable: false },
      caution: cautionWords.shears,
    },
    of: (fields) => ofMirror(fields, at, ({ aside }) => aside),
  }),
]);

/** What a slanted hem gives: its raw edge, its mirrored sides, and where it is pressed. */
export const slantOutputs: Outputs = {
  id: 'slant',
  rule: 1,
  fields: slantFields,
  outputs: [
    ...raw,
    ...mirrors,
    output({
      ...asked,
      key: 'first-press',
      name: words.firstPress,
      step: { ...press, do: words.pressFirst },
      of: (fields): Comes<ExactLength> =>
        fields.turned === 'single'
          ? { ok: false, absent: 'turned' }
          : mapped(slantedHem(slantInput(fields)), ({ turn }) => turn),
    }),
    output({
      ...asked,
      key: 'hem-line',
      name: words.hemLine,
      step: { ...press, do: words.pressHem },
      of: (fields) => mapped(slantedHem(slantInput(fields)), ({ allowance }) => allowance),
    }),
    output({
      ...asked,
      key: 'depth',
      name: words.depth,
      of: (fields) => mapped(slantedHem(slantInput(fields)), ({ depth }) => depth),
    }),
    output({
      ...asked,
      key: 'along',
      name: words.along,
      of: (fields) => ofPiece(fields, 0, ({ along }) => along),
    }),
    output({
      ...asked,
      key: 'angle',
      name: words.angle,
      kind: 'number',
      of: (fields) =>
        mapped(slantedHem(slantInput(fields)), ({ pieces: [first] }) =>
          first ? (first.angle * 180) / Math.PI : 0,
        ),
    }),
  ],
};

/** One number of a piece of the pair; the second is there only where each has its own. */
function ofPiece(
  fields: SlantAsked,
  at: number,
  see: (piece: Slanted) => ExactLength,
): Outcome<ExactLength> {
  return mapped(slantedHem(slantInput(fields)), ({ pieces }) => {
    const piece = pieces[at];
    if (!piece) throw new Error('there is no such piece');
    return see(piece);
  });
}

/** Where the sides turn: of a square hem line nowhere. */
function ofMirror(
  fields: SlantAsked,
  at: number,
  see: (mirror: Slanted['mirror']) => ExactLength,
): Comes<ExactLength> {
  const aside = ofPiece(fields, at, ({ mirror }) => mirror.aside);
  if (aside.ok && aside.value === 0)
    return { ok: false, absent: at === 0 ? 'other' : 'secondOther' };
  return ofPiece(fields, at, ({ mirror }) => see(mirror));
}

function unlessNothing(length: Outcome<ExactLength>, by: string): Comes<ExactLength> {
  return length.ok && length.value === 0 ? { ok: false, absent: by } : length;
}
