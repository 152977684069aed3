import { repeatWords } from '#words/calculations/repeat-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { repeatOutputWords as words } from '#words/outputs/repeat-output-words.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { centred, matchAt, repeatOf, repeatProblems, slanted } from '../../sewing/cloth/repeat.ts';
import { answerUnless, mapped } from '../../sewing/problem.ts';
import {
  CENTRE_FIELDS,
  centreInput,
  kind,
  MATCH_FIELDS,
  matchInput,
  PANEL_FIELDS,
  REPEAT_FIELDS,
  repeatFields,
  SLANT_FIELDS,
  slantInput,
} from './fields.ts';
import { panelsOf } from './worked.ts';

const output = outputOf(repeatFields);
const ofPanels = { reads: PANEL_FIELDS, when: { field: 'kind', is: kind.is('panels') } } as const;
const ofMatch = { reads: MATCH_FIELDS, when: { field: 'kind', is: kind.is('match') } } as const;
const ofCentre = { reads: CENTRE_FIELDS, when: { field: 'kind', is: kind.is('centre') } } as const;
const ofSlant = { reads: SLANT_FIELDS, when: { field: 'kind', is: kind.is('slant') } } as const;
const cuts = { stage: 'cut', undoable: false, caution: cautionWords.shears } as const;

const start = output({
  key: 'start',
  name: words.start,
  kind: 'length',
  ...ofMatch,
  step: { do: words.cutSecond, datum: 'zero', ...cuts, caution: repeatWords.cutFirst },
  of: (fields) => mapped(matchAt(matchInput(fields)), (match) => match.start),
});

/** What stripes and checks give: the cloth, and where pieces are cut of it. */
export const repeatOutputs: Outputs = {
  id: 'repeat',
  rule: 1,
  fields: repeatFields,
  outputs: [
    output({
      key: 'repeat',
      name: words.repeat,
      kind: 'length',
      reads: REPEAT_FIELDS,
      of: (fields) =>
        answerUnless(repeatProblems(fields), () => ({ ok: true, value: repeatOf(fields) })),
    }),
    output({
      key: 'cloth',
      name: words.cloth,
      kind: 'length',
      bound: 'least',
      ...ofPanels,
      of: (fields) => mapped(panelsOf(fields), ({ cloth }) => cloth),
    }),
    output({
      key: 'extra',
      name: words.extra,
      kind: 'length',
      ...ofPanels,
      of: (fields) => mapped(panelsOf(fields), ({ extra }) => extra),
    }),
    output({
      key: 'places',
      name: words.places,
      kind: 'run',
      ...ofPanels,
      decides: ['panels'],
      step: { do: words.cutPanel, datum: 'cut-end', ...cuts },
      of: (fields, { count }) => mapped(panelsOf(fields, count), ({ run }) => run),
    }),
    start,
    output({
      key: 'lost',
      name: words.lost,
      kind: 'length',
      ...ofMatch,
      bentBy: [start],
      of: (fields, { made }) => {
        const input = matchInput(fields);
        return mapped(matchAt(input), (match) => {
          const there = made[start.key];
          return there === undefined ? match.lost : exactLength(there - input.free);
        });
      },
    }),
    output({
      key: 'inside',
      name: words.inside,
      kind: 'length',
      ...ofCentre,
      step: {
        do: words.cutEdges,
        datum: 'zero',
        ...cuts,
        // Cut small it can't be filled.
        bound: 'least',
        caution: repeatWords.cutFirst,
      },
      of: (fields) => mapped(centred(centreInput(fields)), ({ inside }) => inside),
    }),
    output({
      key: 'one',
      name: words.one,
      kind: 'length',
      ...ofSlant,
      of: (fields) => mapped(slanted(slantInput(fields)), ({ one }) => one),
    }),
    output({
      key: 'other',
      name: words.other,
      kind: 'length',
      ...ofSlant,
      of: (fields) => mapped(slanted(slantInput(fields)), ({ other }) => other),
    }),
    output({
      key: 'drift',
      name: words.drift,
      kind: 'length',
      ...ofSlant,
      of: (fields) => mapped(slanted(slantInput(fields)), ({ drift }) => drift),
    }),
  ],
};
