import { type AlongRow, alongRow, centred, type FromCentre, type Space } from '../picture/space.ts';
import { distanceAt, graduationAt, type PositionModel } from './position.ts';

/** Graduations of a row against t = u − centre, in px of the space that its frame lies in. */
export interface Graduated<S extends Space> {
  readonly model: PositionModel<S>;
  readonly centre: AlongRow<S>;
}

/** Px from the row's centre: what a `PositionModel` asks for. */
export function fromCentre<S extends Space>(
  { centre }: Pick<Graduated<S>, 'centre'>,
  u: AlongRow<NoInfer<S>>,
): FromCentre<S> {
  return centred(u - centre);
}

/** Where a graduation stands along the row. */
export function alongAt<S extends Space>(
  { model, centre }: Graduated<S>,
  tick: number,
): AlongRow<S> {
  return alongRow(distanceAt(model, tick) + centre);
}

/** The graduation at a place along the row, with its fraction. */
export function tickAlong<S extends Space>(row: Graduated<S>, u: AlongRow<NoInfer<S>>): number {
  return graduationAt(row.model, fromCentre(row, u));
}

/** The place one px on: two of them show which way a row runs. */
export function nextAlong<S extends Space>(u: AlongRow<S>): AlongRow<S> {
  return alongRow(u + 1);
}
