import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { pocketOutputWords as words } from '#words/outputs/pocket-output-words.ts';
import { type Comes, type Output, outputOf } from '../../calculation/output.ts';
import { type Length, ZERO } from '../../lengths/length.ts';
import { slashFacing } from '../../sewing/bands/pocket.ts';
import { mustBePositive, mustNotBeNegative } from '../../sewing/length-checks.ts';
import { answerUnless, mapped } from '../../sewing/problem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { kind, PATCH_FIELDS, pocketFields } from './fields.ts';
import { patchOf } from './worked.ts';

const output = outputOf(pocketFields);
const ofPatch = { when: { field: 'kind', is: kind.is('patch') } } as const;
const ofSlash = { when: { field: 'kind', is: kind.is('slash') } } as const;
const cuts = {
  datum: 'cut-end',
  stage: 'cut',
  undoable: false,
  bound: 'least',
  caution: cautionWords.shears,
} as const;

/** The hem of a patch; none of nothing. */
function hemOf(hem: Length = ZERO): Comes<Length> {
  if (hem === 0) return { ok: false, absent: 'hem' };
  return answerUnless(mustNotBeNegative('hem', hem), () => ({ ok: true, value: hem }));
}

const wide = output({
  key: 'wide',
  name: words.wide,
  kind: 'length',
  reads: PATCH_FIELDS,
  ...ofPatch,
  step: { do: words.cutWide, ...cuts },
  of: (fields) => mapped(patchOf(fields), (patch) => patch.wide),
});

const facingWide = output({
  key: 'facing-wide',
  name: words.facingWide,
  kind: 'length',
  reads: ['width'],
  ...ofSlash,
  step: { do: words.cutFacingWide, ...cuts },
  of: ({ width }) =>
    answerUnless(mustBePositive('width', width), () => ({
      ok: true,
      value: slashFacing(width).wide,
    })),
});

/** What is cut for a pocket, and pressed before it is sewn on. */
export const cutOutputs: readonly Output[] = [
  wide,
  output({
    key: 'deep',
    name: words.deep,
    kind: 'length',
    reads: PATCH_FIELDS,
    ...ofPatch,
    adds: true,
    material: { kind: 'cloth', across: wide },
    step: { do: words.cutDeep, ...cuts },
    of: (fields) => mapped(patchOf(fields), ({ deep }) => deep),
  }),
  output({
    key: 'hem',
    name: words.hem,
    kind: 'length',
    reads: ['hem'],
    ...ofPatch,
    step: {
      do: words.press,
      datum: 'fold',
      stage: 'join',
      undoable: true,
      caution: turned.iron(IRON_ONE_DOT.value),
    },
    of: ({ hem }) => hemOf(hem),
  }),
  facingWide,
  output({
    key: 'facing-long',
    name: words.facingLong,
    kind: 'length',
    reads: ['width'],
    ...ofSlash,
    adds: true,
    material: { kind: 'cloth', across: facingWide },
    step: { do: words.cutFacingLong, ...cuts },
    of: ({ width }) =>
      answerUnless(mustBePositive('width', width), () => ({
        ok: true,
        value: slashFacing(width).deep,
      })),
  }),
];
