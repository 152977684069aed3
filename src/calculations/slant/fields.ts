import { slantWords as words } from '#words/calculations/slant-words.ts';
import { all, choice, length, not } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { SlantedHemInput, SlantedPiece } from '../../sewing/hems/slanted-hem.ts';

const given = choice(words.given);
const turned = choice(words.turned, { start: 'unequal' });
const pair = choice(words.pair);
const ofCloth = given.is('cloth');
const own = pair.is('own');
const side = { usual: 'garmentLength' } as const;

/** What is asked of a slanted hem: what always matters first. */
export const slantFields = schema(words.labels, {
  one: length({ ...side, start: { cm: '100', mm: '1000', in: '39' } }),
  other: length({ ...side, start: { cm: '101.5', mm: '1015', in: '39 5/8' } }),
  across: length({ start: { cm: '20', mm: '200', in: '8' }, usual: 'across' }),
  given,
  depth: length({
    start: { cm: '4', mm: '40', in: '1 1/2' },
    usual: 'hemDepth',
    when: not(ofCloth),
    givesWay: true,
  }),
  thereOne: length({ ...side, start: { cm: '106', mm: '1060', in: '41 3/8' }, when: ofCloth }),
  thereOther: length({ ...side, start: { cm: '106', mm: '1060', in: '41 3/8' }, when: ofCloth }),
  turned,
  turn: length({
    start: { cm: '1', mm: '10', in: '3/8' },
    usual: 'turn',
    when: turned.is('unequal'),
    givesWay: true,
  }),
  pair,
  secondOne: length({ ...side, start: { cm: '99.5', mm: '995', in: '38 3/4' }, when: own }),
  secondOther: length({ ...side, start: { cm: '101', mm: '1010', in: '39 3/8' }, when: own }),
  secondThereOne: length({
    ...side,
    start: { cm: '105', mm: '1050', in: '41' },
    when: all(own, ofCloth),
  }),
  secondThereOther: length({
    ...side,
    start: { cm: '105', mm: '1050', in: '41' },
    when: all(own, ofCloth),
  }),
});

/** What was read of the fields. */
export type SlantAsked = InputOf<(typeof slantFields)['specs']>;

export const SLANT_FIELDS = [
  ...(['one', 'other', 'across', 'given', 'depth', 'thereOne', 'thereOther'] as const),
  ...(['turned', 'turn', 'pair', 'secondOne', 'secondOther'] as const),
  ...(['secondThereOne', 'secondThereOther'] as const),
] as const satisfies readonly (keyof SlantAsked)[];

/** The slanted hem that is asked for. */
export function slantInput(asked: SlantAsked): SlantedHemInput {
  const { across, depth, turned, turn } = asked;
  const first = turned === 'unequal' ? needed({ turn }).turn : (0 as typeof across);
  return {
    pieces: asked.pair === 'own' ? [firstOf(asked), secondOf(asked)] : [firstOf(asked)],
    across,
    depth,
    turn: turned === 'double' ? 'equal' : first,
  };
}

function firstOf({ one, other, given, thereOne, thereOther }: SlantAsked): SlantedPiece {
  return { one, other, there: thereIf(given, thereOne, thereOther) };
}

function secondOf(asked: SlantAsked): SlantedPiece {
  const { secondOne, secondOther, given, secondThereOne, secondThereOther } = asked;
  const sides = needed({ one: secondOne, other: secondOther });
  return { ...sides, there: thereIf(given, secondThereOne, secondThereOther) };
}

function thereIf(
  given: SlantAsked['given'],
  one: SlantAsked['thereOne'],
  other: SlantAsked['thereOther'],
) {
  return given === 'cloth' ? needed({ one, other }) : undefined;
}
