import { expect, test } from 'vitest';
import {
  type RowFrame,
  rowFrame,
  scaledFrame,
  toFrame,
  toImage,
} from '../../../src/tape/frame/frame.ts';
import { strip } from '../../../src/tape/frame/strip.ts';
import { boxDown, fieldOf } from '../../../src/tape/picture/field.ts';
import { pointOfPlace } from '../../../src/tape/picture/place.ts';
import {
  type AlongRow,
  alongRow,
  centred,
  placeIn,
  scaledPlace,
  scalingOf,
} from '../../../src/tape/picture/space.ts';
import { fromCentre } from '../../../src/tape/pitch/along.ts';
import { phaseTrack } from '../../../src/tape/pitch/phase.ts';
import {
  densityAt,
  distanceAt,
  graduationAt,
  type PositionModel,
  residualAt,
} from '../../../src/tape/pitch/position.ts';
import { readingAt } from '../../../src/tape/scales/read-at.ts';
import { snapTo } from '../../../src/tape/touch/snap.ts';

const picture = fieldOf({ width: 8, height: 8, pixels: new Uint8Array(64) });
const search = boxDown<'search'>(picture, 2);
const found = rowFrame(placeIn<'search'>(1, 1), 0);
const toMeasuring = scalingOf<'search', 'measuring'>(2);
const measured: RowFrame<'measuring'> = scaledFrame(found, toMeasuring);

test('a place of one space is in another only by a conversion that is named', () => {
  const place = toImage(found, alongRow<'search'>(2), 0);
  expect(scaledPlace(place, toMeasuring)).toEqual([6.5, 2.5]);
  expect(toFrame(measured, scaledPlace(place, toMeasuring))).toEqual([4, 0]);
  // @ts-expect-error a place of the search copy isn't one of the measuring copy
  toFrame(measured, place);
  // @ts-expect-error two numbers say nothing of their space
  toFrame(measured, [6.5, 2.5]);
  // @ts-expect-error the other way round
  scaledPlace(place, scalingOf<'measuring', 'picture'>(2));
  // @ts-expect-error what page and worker tell each other is in the picture's pixels
  const told: { x: number } & ReturnType<typeof pointOfPlace<'picture'>> = pointOfPlace(place);
  expect(told).toEqual({ x: 3, y: 1 });
});

test('a row found in one copy is not looked at in another', () => {
  // @ts-expect-error a frame of the measuring copy over the search copy
  expect(strip(search, measured, 1).width).toBeGreaterThanOrEqual(0);
  expect(strip(search, found, 1).width).toBeGreaterThanOrEqual(0);
});

test('px along a row are not px of the picture, nor of another copy’s row', () => {
  const row = { model: { a: 1, b: 0, c: 0 }, centre: alongRow<'picture'>(5) };
  expect(fromCentre(row, alongRow<'picture'>(7))).toBe(2);
  // @ts-expect-error px of a picture
  fromCentre(row, 7);
  // @ts-expect-error px along a row of the search copy
  fromCentre(row, alongRow<'search'>(7));
});

test('px from a row’s centre are not px from where its frame begins', () => {
  const model: PositionModel<'measuring'> = { a: 1, b: 0, c: 0 };
  const centre = alongRow<'measuring'>(5);
  const u = alongRow<'measuring'>(7);
  expect(graduationAt(model, fromCentre({ centre }, u))).toBe(2);
  // @ts-expect-error px from where the frame begins
  expect(graduationAt(model, u)).toBe(7);
  // @ts-expect-error a number that says nothing of where it is counted from
  expect(densityAt(model, 7)).toBe(1);
  // @ts-expect-error of a row in another copy
  expect(residualAt(model, centred<'search'>(7))).toBe(0);
  // @ts-expect-error a graduation stands so far from the centre
  const stands: AlongRow<'measuring'> = distanceAt(model, 3);
  expect(stands).toBe(3);
  const signal = new Float32Array(8).fill(1);
  // @ts-expect-error a signal begins somewhere along the row
  expect(phaseTrack(signal, 0, centre, model, 2).length).toBeGreaterThan(0);
});

test('a place of a copy is not read, nor touched', () => {
  const image = { width: 8, height: 8, pixels: new Uint8Array(64) };
  const reading = { width: 8, height: 8, outcome: 'cannot', scales: [] } as const;
  const place = placeIn<'search'>(1, 1);
  const inPicture = pointOfPlace(scaledPlace(place, scalingOf<'search', 'picture'>(2)));
  expect(readingAt(reading, inPicture).ok).toBe(false);
  expect(snapTo(image, inPicture)).toMatchObject({ x: 2.5, y: 2.5 });
  // @ts-expect-error a place of the search copy
  readingAt(reading, pointOfPlace(place));
  // @ts-expect-error a place of the search copy
  snapTo(image, pointOfPlace(place));
});

test('where graduations stand in one copy says nothing of another', () => {
  const model: PositionModel<'measuring'> = { a: 1, b: 0, c: 0 };
  // @ts-expect-error graduations to a px of the measuring copy
  const row: { model: PositionModel<'picture'> } = { model };
  expect(row.model).toBe(model);
});
