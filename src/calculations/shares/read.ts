import { mapped, type Outcome } from '../../sewing/problem.ts';
import { type Shares, type SharesInput, type Sharing, shareOut } from '../../sewing/sharing.ts';
import type { SharesAsked } from './fields.ts';

/** Places of a girth, by the field that says how many there are, and of a length. */
export const GIRTH_PLACES = [
  'sides',
  'frontDarts',
  'backDarts',
  'frontEdges',
  'backEdges',
  'panelEdges',
] as const;
export const LENGTH_PLACES = ['above', 'below', 'hem'] as const;
export const PLACES = [...GIRTH_PLACES, ...LENGTH_PLACES] as const;
export type PlaceOf = (typeof PLACES)[number];

/** What a change is shared by: the allowance there is has no part in it. */
export const SHARE_FIELDS = [
  'change',
  'what',
  'step',
  ...GIRTH_PLACES,
  'sidesShare',
  'frontDartsShare',
  'backDartsShare',
  'frontEdgesShare',
  'backEdgesShare',
  'panelEdgesShare',
  'aboveShare',
  'belowShare',
  'hemShare',
] as const satisfies readonly (keyof SharesAsked)[];

export type ShareAsked = Pick<SharesAsked, (typeof SHARE_FIELDS)[number]>;

/** A place that takes a share, and what one of it comes to. */
export interface Shared extends Sharing {
  field: PlaceOf;
}

/** The places that take a share, in order. */
export function placesOf(asked: ShareAsked): Shared[] {
  const girth = asked.what === 'girth';
  return PLACES.flatMap((field): Shared[] => {
    const share = asked[`${field}Share`];
    const count = isCounted(field) ? asked[field] : girth ? undefined : 1;
    return share === undefined || count === undefined ? [] : [{ field, count, share }];
  });
}

function isCounted(field: PlaceOf): field is (typeof GIRTH_PLACES)[number] {
  return (GIRTH_PLACES as readonly string[]).includes(field);
}

/** Everything worked out about a change. */
export interface Changed {
  asked: SharesAsked;
  places: readonly Shared[];
  plan: Shares;
}

export function sharesInput(asked: ShareAsked): SharesInput {
  return { change: asked.change, step: asked.step, kinds: placesOf(asked) };
}

/** The change shared out. */
export function changedOf(asked: SharesAsked): Outcome<Changed> {
  const places = placesOf(asked);
  return mapped(shareOut(sharesInput(asked)), (plan) => ({ asked, places, plan }));
}
