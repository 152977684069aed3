import { cautionWords } from '#words/common/caution-words.ts';
import { tiersOutputWords as words } from '#words/outputs/tiers-output-words.ts';
import {
  type Comes,
  type Given,
  type MadeSteps,
  type Output,
  outputOf,
} from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import { partsOfMarks } from '../../sewing/fullness/gathers-marks.ts';
import { MOST_TIERS, type Tier, tierMarks, tiers } from '../../sewing/fullness/tiers.ts';
import { TIERS_FIELDS, type TiersAsked, tiersFields, tiersInput } from './fields.ts';
import { KEYS } from './keys.ts';

const output = outputOf(tiersFields);
const asked = { reads: TIERS_FIELDS } as const;
const decides = ['parts', 'ring'] as const;
const cut = {
  datum: 'cut-end',
  stage: 'cut',
  undoable: false,
  bound: 'least',
  caution: cautionWords.shears,
} as const;

/** What each tier was cut at, from the top; undefined of one that isn't yet. */
function cutOf(made: MadeSteps) {
  return Array.from({ length: MOST_TIERS }, (_, i) => made[KEYS.strip(i)]);
}

/** One tier of the plan, with those above as they were cut; absent where there are not so many. */
function tierOf<Value>(
  fields: TiersAsked,
  i: number,
  made: MadeSteps,
  see: (tier: Tier) => Value,
): Comes<Value> {
  const found = tiers(tiersInput(fields), cutOf(made));
  if (!found.ok) return found;
  const tier = found.value.tiers[i];
  return tier
    ? { ok: true, value: see(tier) }
    : { ok: false, absent: fields.by === 'own' ? 'depths' : 'count' };
}

/** Its marks, as many as asked or as were begun. */
function marksOf(fields: TiersAsked, i: number, { made, count }: Omit<Given, 'fields'>) {
  const input = tiersInput(fields);
  const { ring } = input;
  const parts = count === undefined ? input.parts : partsOfMarks({ flat: ZERO, ring }, count);
  return tierOf(fields, i, made, (tier) => tierMarks({ ...input, parts }, tier));
}

function seen<Value, Other>(comes: Comes<Value>, see: (value: Value) => Other): Comes<Other> {
  return comes.ok ? { ok: true, value: see(comes.value) } : comes;
}

/** All that one tier gives. @param before outputs of those above it, which were cut before */
export function tierOutputs(i: number, before: readonly Output[]): Output[] {
  const above = before.filter(({ key }) => key.startsWith('strip-'));
  const named = words.tier(i + 1);
  const strip = output({
    ...asked,
    key: KEYS.strip(i),
    name: named(words.strip),
    kind: 'length',
    bentBy: above,
    step: { ...cut, do: named(words.cutStrip) },
    of: (fields, { made }) => tierOf(fields, i, made, (tier) => tier.cut),
  });
  const bentBy = [...above, strip];
  return [
    output({
      ...asked,
      key: KEYS.deep(i),
      name: named(words.deep),
      kind: 'length',
      step: { ...cut, do: named(words.cutDeep) },
      of: (fields) => tierOf(fields, i, {}, ({ cutDeep }) => cutDeep),
    }),
    strip,
    output({
      ...asked,
      key: KEYS.along(i),
      name: named(words.along),
      kind: 'length',
      bentBy,
      of: (fields, { made }) => tierOf(fields, i, made, (tier) => tier.strip),
    }),
    output({
      ...asked,
      key: KEYS.marks(i),
      name: named(words.marks),
      kind: 'run',
      decides,
      bentBy,
      step: {
        do: named(words.mark),
        datum: 'cut-end',
        stage: 'join',
        undoable: true,
        caution: cautionWords.pins,
      },
      of: (fields, more) => seen(marksOf(fields, i, more), ({ strip }) => strip),
    }),
    output({
      ...asked,
      key: KEYS.edge(i),
      name: named(words.edgeMarks),
      kind: 'run',
      decides,
      bentBy: above,
      step: { do: named(words.markEdge), datum: 'strip-begins', stage: 'join', undoable: true },
      of: (fields, more) => seen(marksOf(fields, i, more), ({ edge }) => edge),
    }),
  ];
}
