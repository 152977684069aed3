import { pieceWords as words } from '#words/calculations/piece-words.ts';
import {
  type Ask,
  all,
  choice,
  lengthBeside,
  maybeLength,
  not,
} from '../../calculation/field-spec.ts';
import type { Length } from '../../lengths/length.ts';
import type { Slant, Slants } from '../../sewing/pieces/piece-slants.ts';

export const fold = choice(words.fold);
/** Whether one side is the fold. */
export const onFold = fold.is('side');
export const sides = choice(words.sides, { when: not(onFold) });
/** Whether its two sides are each asked for. */
export const differ = all(not(onFold), sides.is('different'));

const slants = choice(words.slants);
/** Whether edges slant each by two measures of its own. */
export const slanted = slants.is('own');

const ofFold = (label: string) => (ask: Ask) => (onFold(ask) ? label : undefined);
const topFalls = maybeLength(words.isLevel, { when: slanted, label: ofFold(words.topFromFold) });
const bottomRises = maybeLength(words.isLevel, {
  when: slanted,
  label: ofFold(words.bottomFromFold),
});
const sideLeans = maybeLength(words.upright, {
  when: slanted,
  label: (ask) => (differ(ask) ? words.oneLeans : ofFold(words.farLeans)(ask)),
});
const otherLeans = maybeLength(words.upright, { when: all(slanted, differ) });

/** How each edge slants: by so much, over so much. */
export const slantSpecs = {
  slants,
  topFalls,
  topOver: lengthBeside(topFalls, words.notGiven, { usual: 'across' }),
  bottomRises,
  bottomOver: lengthBeside(bottomRises, words.notGiven, { usual: 'across' }),
  sideLeans,
  sideOver: lengthBeside(sideLeans, words.notGiven, { usual: 'garmentLength' }),
  otherLeans,
  otherOver: lengthBeside(otherLeans, words.notGiven, { usual: 'garmentLength' }),
};

/** The lengths among them. */
export const SLANTS = [
  ...(['topFalls', 'topOver', 'bottomRises', 'bottomOver'] as const),
  ...(['sideLeans', 'sideOver', 'otherLeans', 'otherOver'] as const),
] as const;

type Measured = Partial<Readonly<Record<(typeof SLANTS)[number], Length | undefined>>>;

/** The slants that are asked for; sides that are alike slant alike. */
export function slantsOf(asked: Measured, differing: boolean): Slants {
  const side = slantOf(asked.sideLeans, asked.sideOver);
  return {
    top: slantOf(asked.topFalls, asked.topOver),
    bottom: slantOf(asked.bottomRises, asked.bottomOver),
    side,
    other: differing ? slantOf(asked.otherLeans, asked.otherOver) : side,
  };
}

function slantOf(by: Length | undefined, over: Length | undefined): Slant | undefined {
  return by === undefined || over === undefined ? undefined : { by, over };
}
