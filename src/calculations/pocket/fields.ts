import { pocketWords as words } from '#words/calculations/pocket-words.ts';
import {
  all,
  choice,
  given,
  length,
  lengthOrNone,
  maybeLength,
} from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import { ZERO } from '../../lengths/length.ts';
import type { PocketInput, PocketPlace } from '../../sewing/bands/pocket.ts';

export const kind = choice(words.kind);
const onFront = kind.is('patch', 'slash');
const place = choice(words.place, { when: onFront });
const hand = maybeLength(words.notGiven, {
  start: { cm: '21', mm: '210', in: '8 1/4' },
  usual: 'around',
});

/** What is asked of a pocket: what always matters first. */
export const pocketFields = schema(words.labels, {
  kind,
  front: length({ start: { cm: '32', mm: '320', in: '12 1/2' }, when: onFront, usual: 'across' }),
  width: length({
    start: { cm: '15', mm: '150', in: '6' },
    usual: 'across',
    label: (ask) => (ask(kind) === 'patch' ? undefined : words.opening),
  }),
  place,
  near: length({
    start: { cm: '10', mm: '100', in: '4' },
    when: all(onFront, place.is('given')),
  }),
  down: length({ start: { cm: '9', mm: '90', in: '3 1/2' }, usual: 'garmentLength' }),
  slant: lengthOrNone(words.level, { when: onFront }),
  deep: length({
    start: { cm: '17', mm: '170', in: '6 3/4' },
    when: kind.is('patch'),
    usual: 'stripDeep',
  }),
  hem: lengthOrNone(words.none, {
    start: { cm: '2.5', mm: '25', in: '1' },
    when: kind.is('patch'),
    usual: 'hemDepth',
  }),
  seam: length({
    start: { cm: '1', mm: '10', in: '3/8' },
    when: kind.is('patch'),
    usual: 'seamAllowance',
    givesWay: true,
  }),
  hand,
  ease: lengthOrNone(words.none, {
    start: { cm: '2', mm: '20', in: '3/4' },
    when: given(hand),
    usual: 'wearingEase',
  }),
  to: maybeLength(words.notGiven, { usual: 'garmentLength' }),
});

/** What was read of the fields. */
export type PocketAsked = InputOf<(typeof pocketFields)['specs']>;

/** What its place is worked out from. */
export const PLACE_FIELDS = ['front', 'width', 'place', 'near', 'down', 'slant'] as const;
/** What a patch is cut from. */
export const PATCH_FIELDS = ['width', 'deep', 'hem', 'seam'] as const;

/** The place that is asked for, of what lies on a front. */
export function placeInput(asked: Pick<PocketAsked, (typeof PLACE_FIELDS)[number]>): PocketInput {
  const { width, down, slant = ZERO, front } = asked;
  return { ...needed({ front }), width, down, slant, place: placeOf(asked) };
}

function placeOf({ place, near }: Pick<PocketAsked, 'place' | 'near'>): PocketPlace {
  return place === 'given'
    ? { by: 'given', ...needed({ near }) }
    : { by: place === 'middle' ? 'middle' : 'thirds' };
}
