import { needed } from '../../calculation/needed.ts';
import { exactLength } from '../../lengths/length.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import {
  type Godet,
  godet,
  type Lengthened,
  lengthen,
  type Slashed,
  slash,
} from '../../sewing/shaping/flare.ts';
import type { FlareAsked } from './fields.ts';

/** What was made of a hem. */
export type Flared =
  | { what: 'slash'; plan: Slashed }
  | { what: 'godet'; plan: Godet }
  | { what: 'length'; plan: Lengthened };

export const SLASH_FIELDS = ['what', 'sweep', 'long', 'by', 'slashes', 'spread', 'wanted'] as const;
export const GODET_FIELDS = [
  'what',
  'sweep',
  'godets',
  'edge',
  'opens',
  'angle',
  'added',
  'seam',
  'hemMore',
] as const;
export const LENGTH_FIELDS = ['what', 'sweep', 'upper', 'long', 'way', 'change', 'pieces'] as const;

type Of<Key extends keyof FlareAsked> = Pick<FlareAsked, Key>;

export function slashAsked(asked: Of<(typeof SLASH_FIELDS)[number]>): Outcome<Slashed> {
  const { sweep, by, spread, wanted } = asked;
  const { long, slashes } = needed({ long: asked.long, slashes: asked.slashes });
  const how =
    by === 'spread'
      ? { by, ...needed({ spread }) }
      : ({ by: 'wanted', ...needed({ wanted }) } as const);
  return slash({ sweep, long, slashes, how });
}

export function godetAsked(asked: Of<(typeof GODET_FIELDS)[number]>): Outcome<Godet> {
  const { sweep, opens, angle, added, seam, hemMore } = asked;
  const { godets, edge } = needed({ godets: asked.godets, edge: asked.edge });
  const how =
    opens === 'angle'
      ? { by: opens, ...needed({ angle }) }
      : ({ by: 'added', ...needed({ added }) } as const);
  return godet({ sweep, godets, edge, how, seam, hem: hemMore });
}

export function lengthAsked(asked: Of<(typeof LENGTH_FIELDS)[number]>): Outcome<Lengthened> {
  const { sweep, way } = asked;
  const { upper, long, change, pieces } = needed({
    ...{ upper: asked.upper, long: asked.long, change: asked.change, pieces: asked.pieces },
  });
  const by = exactLength(way === 'longer' ? change : -change);
  return lengthen({ upper, sweep, long, change: by, pieces });
}

/** All that is asked of flare, or every reason why not. */
export function flared(asked: FlareAsked): Outcome<Flared> {
  switch (asked.what) {
    case 'slash':
      return mapped(slashAsked(asked), (plan) => ({ what: 'slash', plan }));
    case 'godet':
      return mapped(godetAsked(asked), (plan) => ({ what: 'godet', plan }));
    case 'length':
      return mapped(lengthAsked(asked), (plan) => ({ what: 'length', plan }));
  }
}
