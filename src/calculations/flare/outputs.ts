import { flareWords } from '#words/calculations/flare-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { flareOutputWords as words } from '#words/outputs/flare-output-words.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import { mapped } from '../../sewing/problem.ts';
import type { Godet, Lengthened } from '../../sewing/shaping/flare.ts';
import { type FlareAsked, flareFields, what } from './fields.ts';
import {
  flared,
  GODET_FIELDS,
  godetAsked,
  LENGTH_FIELDS,
  lengthAsked,
  SLASH_FIELDS,
  slashAsked,
} from './flared.ts';

const output = outputOf(flareFields);
const only = (kind: FlareAsked['what']) => ({ field: 'what', is: what.is(kind) }) as const;
const cuts = { datum: 'cut-end', stage: 'cut', undoable: false, bound: 'least' } as const;
const ofGodet = { kind: 'length', reads: GODET_FIELDS, when: only('godet') } as const;
const ofLength = { kind: 'length', reads: LENGTH_FIELDS, when: only('length') } as const;

const godetLong = output({
  ...ofGodet,
  key: 'godet-long',
  name: words.godetLong,
  step: { do: words.cutLong, ...cuts, caution: cautionWords.shears },
  of: (fields) => mapped(godetAsked(fields), ({ long }) => long),
});

const godetWide = output({
  ...ofGodet,
  key: 'godet-wide',
  name: words.godetWide,
  step: { do: words.cutWide, ...cuts, caution: cautionWords.shears },
  of: (fields) => mapped(godetAsked(fields), ({ wide }) => wide),
});

const seen = (key: 'added' | 'chord', name: string, see: (plan: Godet) => Godet['added']) =>
  output({ ...ofGodet, key, name, of: (fields) => mapped(godetAsked(fields), see) });

const changed = (key: 'long' | 'jog', name: string, see: (plan: Lengthened) => Lengthened['jog']) =>
  output({ ...ofLength, key, name, of: (fields) => mapped(lengthAsked(fields), see) });

/** What flare gives: its hem, and what is cut or spread for it. */
export const flareOutputs: Outputs = {
  id: 'flare',
  rule: 1,
  fields: flareFields,
  outputs: [
    output({
      key: 'spread',
      name: words.spread,
      kind: 'length',
      reads: SLASH_FIELDS,
      when: only('slash'),
      step: { do: words.slash, datum: 'zero', stage: 'cut', undoable: true },
      of: (fields) => mapped(slashAsked(fields), ({ spread }) => spread),
    }),
    output({
      ...ofLength,
      key: 'change',
      name: words.change,
      step: { do: words.redraw, datum: 'zero', stage: 'cut', undoable: true },
      of: (fields) => mapped(lengthAsked(fields), () => fields.change ?? ZERO),
    }),
    godetLong,
    godetWide,
    output({
      ...ofGodet,
      key: 'edge',
      name: words.edge,
      step: {
        do: words.cutSlit,
        datum: 'stitch-line',
        stage: 'cut',
        undoable: false,
        caution: flareWords.stay,
      },
      of: (fields) => mapped(godetAsked(fields), () => fields.edge ?? ZERO),
    }),
    output({
      key: 'godets',
      name: words.godets,
      kind: 'count',
      reads: GODET_FIELDS,
      when: only('godet'),
      adds: true,
      material: { kind: 'cloth', along: godetLong, across: godetWide },
      of: (fields) => mapped(godetAsked(fields), () => fields.godets ?? 1),
    }),
    output({
      key: 'hem',
      name: words.hem,
      kind: 'length',
      reads: [...new Set([...SLASH_FIELDS, ...GODET_FIELDS, ...LENGTH_FIELDS])],
      of: (fields) => mapped(flared(fields), ({ plan }) => plan.hem),
    }),
    seen('added', words.added, ({ added }) => added),
    seen('chord', words.chord, ({ chord }) => chord),
    changed('long', words.long, ({ long }) => long),
    changed('jog', words.jog, ({ jog }) => jog),
  ],
};
