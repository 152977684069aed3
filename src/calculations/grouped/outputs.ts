import { groupedWords } from '#words/calculations/grouped-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { groupedOutputWords as words } from '#words/outputs/grouped-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { bandEnd, overFold } from '../../sewing/bands/band-end.ts';
import { grouped } from '../../sewing/closures/grouped.ts';
import { mapped } from '../../sewing/problem.ts';
import {
  FOLD_FIELDS,
  foldInput,
  GROUP_FIELDS,
  groupedFields,
  groupsInput,
  kind,
  LAP_FIELDS,
  lapInput,
} from './fields.ts';
import { loopOutputs } from './loop-outputs.ts';

const output = outputOf(groupedFields);
const ofGroups = { reads: GROUP_FIELDS, when: { field: 'kind', is: kind.is('groups') } } as const;
const isLap = { field: 'kind', is: kind.is('lap') } as const;
const ofHole = {
  reads: LAP_FIELDS,
  when: [isLap, { field: 'hole', is: given(groupedFields.specs.hole) }],
} as const;
const closes = { stage: 'close', undoable: true } as const;

const fastener = output({
  key: 'fastener',
  name: words.fastener,
  kind: 'length',
  reads: LAP_FIELDS,
  when: isLap,
  step: { do: words.markAt, datum: 'zero', ...closes },
  of: (fields) => mapped(bandEnd(lapInput(fields)), () => lapInput(fields).from),
});

const holeFrom = output({
  key: 'hole-from',
  name: words.holeFrom,
  kind: 'length',
  ...ofHole,
  bentBy: [fastener],
  step: { do: words.markHole, datum: 'zero', ...closes },
  of: (fields, { made }) => {
    const input = lapInput(fields);
    return mapped(bandEnd(input), ({ hole }) =>
      exactLength(needed({ hole }).hole.starts + (made[fastener.key] ?? input.from) - input.from),
    );
  },
});

/** What closings that are no single row give: places, mates, and what is cut for them. */
export const groupedOutputs: Outputs = {
  id: 'grouped',
  rule: 1,
  fields: groupedFields,
  outputs: [
    output({
      key: 'places',
      name: words.places,
      kind: 'run',
      ...ofGroups,
      step: { do: words.mark, datum: 'top-edge', ...closes, caution: groupedWords.holeLast },
      of: (fields) => mapped(grouped(groupsInput(fields)), ({ run }) => run),
    }),
    output({
      key: 'count',
      name: words.count,
      kind: 'count',
      ...ofGroups,
      adds: true,
      material: { kind: 'closure' },
      of: (fields) => mapped(grouped(groupsInput(fields)), ({ count }) => count),
    }),
    output({
      key: 'between',
      name: words.between,
      kind: 'length',
      ...ofGroups,
      of: (fields) => mapped(grouped(groupsInput(fields)), ({ between }) => between),
    }),
    fastener,
    output({
      key: 'mate',
      name: words.mate,
      kind: 'length',
      reads: LAP_FIELDS,
      when: isLap,
      bentBy: [fastener],
      step: { do: words.markMate, datum: 'zero', ...closes },
      of: (fields, { made }) => {
        const input = lapInput(fields);
        return mapped(bandEnd(input), () =>
          exactLength(input.lap - (made[fastener.key] ?? input.from)),
        );
      },
    }),
    holeFrom,
    output({
      key: 'hole-to',
      name: words.holeTo,
      kind: 'length',
      ...ofHole,
      bentBy: [fastener, holeFrom],
      step: {
        do: words.cutHole,
        datum: 'zero',
        stage: 'close',
        undoable: false,
        caution: groupedWords.holeLast,
      },
      of: (fields, { made }) => {
        const input = lapInput(fields);
        return mapped(bandEnd(input), ({ hole }) => {
          const { starts, ends } = needed({ hole }).hole;
          const moved = (made[fastener.key] ?? input.from) - input.from;
          return exactLength((made[holeFrom.key] ?? starts + moved) + ends - starts);
        });
      },
    }),
    ...loopOutputs,
    output({
      key: 'apart',
      name: words.apart,
      kind: 'length',
      reads: FOLD_FIELDS,
      when: { field: 'kind', is: kind.is('fold') },
      step: { do: words.markApart, datum: 'zero', ...closes, caution: cautionWords.smallParts },
      of: (fields) => overFold(foldInput(fields)),
    }),
  ],
};
