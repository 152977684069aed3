import { mapped, type Outcome } from '../../sewing/problem.ts';
import { type Circle, circle } from '../../sewing/shaping/circle.ts';
import { type CircleAsked, circleInput } from './fields.ts';

/** Circular pieces as they were worked out, with what was asked. */
export interface Rounded {
  asked: CircleAsked;
  plan: Circle;
}

/** All that is asked of circular pieces, or every reason why not. */
export function rounded(asked: CircleAsked): Outcome<Rounded> {
  return mapped(circle(circleInput(asked)), (plan) => ({ asked, plan }));
}
