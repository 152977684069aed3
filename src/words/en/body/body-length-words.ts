import type { MeasureSaid } from './body-girth-words.ts';

/** What is measured along the body, and across it. */
export const lengthMeasures = {
  height: {
    name: 'Height',
    where: 'From the top of the head straight down to the floor, heels at a wall.',
    also: 'stature tall body long',
  },
  'cervical-height': {
    name: 'Cervical height',
    where: 'From the bone at the nape straight down to the floor.',
    also: 'nape neck floor length gown cloak coat long',
  },
  'waist-height': {
    name: 'Waist height',
    where: 'From the waist straight down to the floor.',
    note: 'Say in its name which waist you took.',
    also: 'skirt length floor long',
  },
  'knee-height': {
    name: 'Knee height',
    where: 'From the middle of the kneecap straight down to the floor.',
    also: 'breeches skirt length leg',
  },
  'inside-leg-length': {
    name: 'Inside leg length',
    where: 'From the crotch down the inside of the leg to the floor, feet a little apart.',
    also: 'inseam trousers crotch height long',
  },
  'outside-leg-length': {
    name: 'Outside leg length',
    where: 'At the side, from the waist over the hip and straight down to the floor.',
    note: 'Say in its name which waist you took.',
    also: 'outseam side seam trousers long',
  },
  'body-rise': {
    name: 'Body rise',
    where: 'Sitting upright on a hard, flat seat: at the side, from the waist down to the seat.',
    note: 'Say in its name which waist you took.',
    also: 'crotch depth trousers seat sitting',
  },
  'waist-to-hips': {
    name: 'Waist to hips',
    where: 'At the side, over the hip, from the waist to the level of the hip girth.',
    note: 'Say in its name which waist you took.',
    also: 'depth level seat skirt',
  },
  'total-crotch-length': {
    name: 'Total crotch length',
    where: 'From the waist in front between the legs to the waist behind, not pulled tight.',
    note: 'Say in its name which waist you took.',
    also: 'trousers fork rise through legs',
  },
  'back-waist-length': {
    name: 'Cervical to waist, back',
    where: 'From the bone at the nape down the spine to the waist.',
    note: 'Say in its name which waist you took.',
    also: 'nape neck back length bodice coat',
  },
  'front-waist-length': {
    name: 'Neck-shoulder to waist, front',
    where:
      'From the side of the neck, where it meets the shoulder, over the breast and down to the waist.',
    note: 'Say in its name which waist you took.',
    also: 'front length bodice bust',
  },
  'breast-point-length': {
    name: 'Neck-shoulder to breast point',
    where: 'From the side of the neck, where it meets the shoulder, to the point of the breast.',
    also: 'bust point dart apex bodice',
  },
  'scye-depth': {
    name: 'Scye depth',
    where:
      'From the bone at the nape down the spine to the level of the armpits: a ruler held under the arms shows it.',
    also: 'armhole depth back nape',
  },
  'arm-length': {
    name: 'Arm length',
    where: 'From the edge of the shoulder bone over the elbow to the wrist bone, arm bent.',
    also: 'sleeve long',
  },
  'upper-arm-length': {
    name: 'Upper arm length',
    where: 'From the edge of the shoulder bone to the point of the elbow, arm bent.',
    also: 'sleeve short elbow shoulder',
  },
  'under-arm-length': {
    name: 'Under-arm length',
    where: 'From the armpit along the inside of the arm to the wrist.',
    also: 'sleeve seam inside',
  },
  'cervical-to-wrist': {
    name: '7th cervical to wrist',
    where:
      'From the bone at the nape over the edge of the shoulder bone and the elbow to the wrist bone, arm a little bent.',
    also: 'sleeve nape neck shirt raglan kimono',
  },
  'foot-length': {
    name: 'Foot length',
    where: 'From the back of the heel to the longest toe, standing on it.',
    also: 'shoe sock stocking slipper',
  },
  'shoulder-length': {
    name: 'Shoulder length',
    where:
      'From the side of the neck, where it meets the shoulder, to the edge of the shoulder bone.',
    also: 'seam neck arm wide',
  },
  'shoulder-width': {
    name: 'Shoulder width',
    where: 'Across the back from the edge of one shoulder bone over the nape to the other.',
    also: 'back broad across',
  },
  'back-width': {
    name: 'Back width',
    where: 'Across the back from one armpit’s fold to the other, arms down.',
    also: 'broad across blades interscye',
  },
} as const satisfies Readonly<Record<string, MeasureSaid>>;
