import { cautionWords } from '#words/common/caution-words.ts';
import { dartOutputWords as words } from '#words/outputs/dart-output-words.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { exactLength, type Length, length, ZERO } from '../../lengths/length.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { type Wedge, wedgeOf } from '../../sewing/shaping/dart.ts';
import { dartInSeam, gatherDart, moveDart, twoEnded } from '../../sewing/shaping/dart-turned.ts';
import { edgeAsked, WEDGE_FIELDS, wedgeAsked } from './darted.ts';
import { type DartAsked, dartFields, what } from './fields.ts';

const output = outputOf(dartFields);
const DEGREES = 180 / Math.PI;

/** What is worked out of the dart's legs, or why they can't be. */
function after<Value>(found: Outcome<Wedge>, see: (dart: Wedge) => Outcome<Value>): Outcome<Value> {
  return found.ok ? see(found.value) : found;
}

const only = (...kinds: DartAsked['what'][]) => ({ field: 'what', is: what.is(...kinds) }) as const;

const width = output({
  key: 'width',
  name: words.width,
  kind: 'length',
  reads: WEDGE_FIELDS,
  step: { do: words.mark, datum: 'stitch-line', stage: 'cut', undoable: true },
  of: (fields) => mapped(wedgeAsked(fields), (dart) => dart.width),
});

const point = output({
  key: 'point',
  name: words.point,
  kind: 'length',
  reads: WEDGE_FIELDS,
  when: only('edge'),
  step: { do: words.markPoint, datum: 'stitch-line', stage: 'cut', undoable: true },
  of: (fields) => mapped(wedgeAsked(fields), (dart) => dart.middle),
});

/** A dart as its legs and its point were marked, with how long they then are. */
function marked(dart: Wedge, leg: Length, made: Readonly<Record<string, number>>): [Wedge, Length] {
  if (made[width.key] === undefined && made[point.key] === undefined) return [dart, leg];
  const [across, down] = [made[width.key] ?? dart.width, made[point.key] ?? dart.middle];
  const long = length(Math.round(Math.hypot(down, across / 2)));
  return [wedgeOf(2 * Math.atan(across / 2 / down), long), long];
}

const tip = output({
  key: 'tip',
  name: words.tip,
  kind: 'length',
  reads: [...WEDGE_FIELDS, 'slant', 'other', 'seam'],
  when: only('edge'),
  bentBy: [width, point],
  step: {
    do: words.cut,
    datum: 'zero',
    stage: 'cut',
    undoable: false,
    bound: 'least',
    caution: cautionWords.shears,
  },
  of: (fields, { made }) =>
    after(wedgeAsked(fields), (planned) => {
      const [dart, leg] = marked(planned, fields.leg ?? ZERO, made);
      return mapped(edgeAsked({ ...fields, leg }, dart), ({ cutTip }) => cutTip);
    }),
});

const sewn = { datum: 'stitch-line', stage: 'join', undoable: true } as const;

/** What a dart gives: its legs and its edge, and what it becomes. */
export const dartOutputs: Outputs = {
  id: 'dart',
  rule: 1,
  fields: dartFields,
  outputs: [
    width,
    point,
    tip,
    output({
      key: 'leg',
      name: words.leg,
      kind: 'length',
      reads: WEDGE_FIELDS,
      when: only('edge', 'two'),
      step: { ...sewn, do: words.sew, caution: cautionWords.pins },
      of: (fields) =>
        mapped(wedgeAsked(fields), (dart) =>
          exactLength(
            fields.what === 'two' ? Math.hypot(dart.middle, dart.width / 2) : (fields.leg ?? ZERO),
          ),
        ),
    }),
    output({
      key: 'leg-below',
      name: words.legBelow,
      kind: 'length',
      reads: ['what', 'width', 'above', 'below'],
      when: only('two'),
      step: { ...sewn, do: words.sewBelow, caution: cautionWords.pins },
      of: ({ width, above, below }) =>
        mapped(twoEnded(needed({ width, above, below })), (legs) => legs.below),
    }),
    output({
      key: 'angle',
      name: words.angle,
      kind: 'number',
      reads: WEDGE_FIELDS,
      of: (fields) => mapped(wedgeAsked(fields), ({ angle }) => angle * DEGREES),
    }),
    output({
      key: 'moved',
      name: words.moved,
      kind: 'length',
      reads: [...WEDGE_FIELDS, 'reach', 'parts'],
      when: only('moved'),
      step: { do: words.markMoved, datum: 'stitch-line', stage: 'cut', undoable: true },
      of: ({ reach, parts, ...fields }) =>
        after(wedgeAsked(fields), (dart) =>
          mapped(moveDart(dart, needed({ reach, parts })), (moved) => moved.width),
        ),
    }),
    output({
      key: 'strip',
      name: words.strip,
      kind: 'length',
      reads: [...WEDGE_FIELDS, 'zone'],
      when: only('gathers'),
      of: ({ zone, ...fields }) =>
        after(wedgeAsked(fields), (dart) =>
          mapped(gatherDart(dart, needed({ zone }).zone), ({ strip }) => strip),
        ),
    }),
    output({
      key: 'ratio',
      name: words.ratio,
      kind: 'number',
      reads: [...WEDGE_FIELDS, 'zone'],
      when: only('gathers'),
      of: ({ zone, ...fields }) =>
        after(wedgeAsked(fields), (dart) =>
          mapped(gatherDart(dart, needed({ zone }).zone), ({ ratio }) => ratio),
        ),
    }),
    ...(['kept', 'taken'] as const).map((key) =>
      output({
        key,
        name: words[key],
        kind: 'length',
        reads: [...WEDGE_FIELDS, 'part'],
        when: only('seam'),
        ...(key === 'kept' && {
          step: { do: words.markKept, datum: 'stitch-line', stage: 'cut', undoable: true } as const,
        }),
        of: ({ part, ...fields }) =>
          after(wedgeAsked(fields), (dart) => {
            const asked = needed({ leg: fields.leg, part });
            return mapped(dartInSeam(dart, asked.leg, asked.part), (seamed) => seamed[key]);
          }),
      }),
    ),
  ],
};
