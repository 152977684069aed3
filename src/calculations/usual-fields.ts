import type { Calculation, Draft } from '../calculation/calculation.ts';
import type { Measure } from '../sewing/sources/usual.ts';

type MeasureOf = Measure | ((draft: Draft) => Measure);

const STRIP = { pitch: 'holePitch', width: 'stripWidth', margin: 'holeMargin' } as const;

/** Which measure of the bench each field holds, by calculation and field. */
export const USUAL_FIELDS: Readonly<Record<string, Readonly<Record<string, MeasureOf>>>> = {
  closures: {
    opening: 'opening',
    count: 'closures',
    top: 'endMargin',
    bottom: 'endMargin',
    pitch: 'closurePitch',
    gap: 'closurePitch',
    width: 'closureWidth',
    setBack: 'setBack',
    lap: 'lap',
  },
  edging: {
    ...STRIP,
    length: 'stripLength',
    hole: 'punch',
    radius: 'curveRadius',
    angle: 'cornerAngle',
    teeth: 'teeth',
    stock: 'stripLength',
  },
  crossing: {
    ...STRIP,
    hole: 'punch',
    angle: 'cornerAngle',
    upperPitch: 'holePitch',
    upperWidth: 'stripWidth',
    upperMargin: 'holeMargin',
  },
  lacing: {
    holes: 'holes',
    pitch: 'holePitch',
    margin: 'holeMargin',
    thickness: 'layers',
    outside: 'outside',
    lace: 'lace',
    tail: 'tail',
    longest: 'lacePiece',
  },
};

/** Of calculations whose fields don't say it themselves yet. */
export function usualOf(id: string): NonNullable<Calculation['measureOf']> {
  const measures = USUAL_FIELDS[id] ?? {};
  return (key, draft) => {
    const measure = Object.hasOwn(measures, key) ? measures[key] : undefined;
    return typeof measure === 'function' ? measure(draft) : measure;
  };
}
