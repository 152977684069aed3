/** How measures are grouped: round the body, along it, across it. */
export const MEASURE_GROUPS = ['girths', 'lengths', 'widths'] as const;
export type MeasureGroup = (typeof MEASURE_GROUPS)[number];

/** What a measure is taken over. */
export type TakenOver = 'skin' | 'worn-beneath' | 'bra' | 'no-shoes' | 'hair';

/**
 * Who names a measure. That a name is read there doesn't say where it is taken, which is from memory of
 * the trade but for those in `TAKEN_AS_READ`.
 */
export type NamedBy = 'iso-1989' | 'iso-2017' | 'en-13402' | 'memory' | 'survey';

/** A measure of a wearer, apart from its words and its drawing. */
export interface BodyMeasure {
  group: MeasureGroup;
  over: TakenOver;
  named: NamedBy;
  /** Left and right may differ, and be taken each. */
  sides?: true;
}

const girth = (over: TakenOver, named: NamedBy = 'iso-1989'): BodyMeasure => ({
  ...{ group: 'girths', over, named },
});
const along = (over: TakenOver, named: NamedBy = 'iso-1989'): BodyMeasure => ({
  ...{ group: 'lengths', over, named },
});
const across: BodyMeasure = { group: 'widths', over: 'worn-beneath', named: 'iso-1989' };
const each = (one: BodyMeasure): BodyMeasure => ({ ...one, sides: true });

/**
 * The measures a garment is made to, by ids that never change meaning; a kept garment holds them.
 *
 * Reference: the names of ISO 8559:1989, as a textbook on apparel sizing lists them; the two waists of ISO
 * 8559-1:2017, from the same; EN 13402-1 for head, neck, chest and bust. Underbust is from memory of
 * EN 13402-1, the total crotch length and the upper chest girth of ISO 8559-1; those of `survey` are of the ANSUR II survey.
 */
export const BODY_MEASURES = {
  'head-girth': girth('hair', 'en-13402'),
  'neck-girth': girth('skin', 'en-13402'),
  'neck-base-girth': girth('skin'),
  'bust-girth': girth('bra', 'en-13402'),
  'chest-girth': girth('worn-beneath', 'en-13402'),
  'upper-chest-girth': girth('worn-beneath', 'memory'),
  'underbust-girth': girth('worn-beneath', 'memory'),
  'waist-girth': girth('worn-beneath', 'iso-2017'),
  'natural-waist-girth': girth('worn-beneath', 'iso-2017'),
  'hip-girth': girth('worn-beneath'),
  'shoulder-girth': girth('worn-beneath', 'survey'),
  'trunk-circumference': girth('worn-beneath'),
  'armscye-girth': each(girth('worn-beneath')),
  'upper-arm-girth': each(girth('skin')),
  'elbow-girth': each(girth('skin')),
  'forearm-girth': each(girth('skin', 'survey')),
  'wrist-girth': each(girth('skin')),
  'hand-girth': each(girth('skin')),
  'thigh-girth': each(girth('worn-beneath')),
  'mid-thigh-girth': each(girth('worn-beneath')),
  'lower-thigh-girth': each(girth('skin', 'survey')),
  'knee-girth': each(girth('skin')),
  'lower-knee-girth': each(girth('skin')),
  'calf-girth': each(girth('skin')),
  'minimum-leg-girth': each(girth('skin')),
  'ankle-girth': each(girth('skin')),
  'heel-girth': each(girth('skin', 'survey')),
  height: along('no-shoes'),
  'cervical-height': along('no-shoes'),
  'waist-height': along('no-shoes'),
  'hip-height': along('no-shoes'),
  'knee-height': along('no-shoes'),
  'ankle-height': along('no-shoes'),
  'inside-leg-length': along('no-shoes'),
  'outside-leg-length': each(along('no-shoes')),
  'thigh-length': each(along('worn-beneath')),
  'body-rise': along('worn-beneath'),
  'waist-to-hips': along('worn-beneath'),
  'total-crotch-length': along('worn-beneath', 'memory'),
  'trunk-length': along('worn-beneath'),
  'cervical-to-knee-hollow': along('worn-beneath'),
  'back-waist-length': along('worn-beneath'),
  'cervical-to-waist-front': along('worn-beneath'),
  'front-waist-length': along('worn-beneath'),
  'cervical-to-breast-point': each(along('bra')),
  'breast-point-length': each(along('bra')),
  'scye-depth': along('worn-beneath'),
  'arm-length': each(along('worn-beneath')),
  'upper-arm-length': each(along('worn-beneath')),
  'under-arm-length': each(along('worn-beneath')),
  'cervical-to-wrist': each(along('worn-beneath')),
  'hand-length': each(along('skin')),
  'foot-length': each(along('no-shoes')),
  'shoulder-length': each(across),
  'shoulder-width': across,
  'shoulder-breadth': { ...across, named: 'survey' },
  'back-width': across,
  'hand-breadth': { ...each(across), over: 'skin', named: 'survey' },
  'arm-span': { ...across, named: 'survey' },
} as const satisfies Readonly<Record<string, BodyMeasure>>;

export type BodyMeasureId = keyof typeof BODY_MEASURES;

/** Those whose place is told as their standard is quoted, not from memory. */
export const TAKEN_AS_READ: ReadonlySet<BodyMeasureId> = new Set<BodyMeasureId>([
  'head-girth',
  'neck-girth',
  'waist-girth',
  'natural-waist-girth',
]);

/** Whether an id is that of a measure this build knows. */
export function isBodyMeasure(id: unknown): id is BodyMeasureId {
  return typeof id === 'string' && Object.hasOwn(BODY_MEASURES, id);
}
