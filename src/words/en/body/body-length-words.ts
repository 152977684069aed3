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
  'hip-height': {
    name: 'Hip height',
    where: 'At the side, from the level of the hip girth straight down to the floor.',
    also: 'seat skirt length floor level',
  },
  'knee-height': {
    name: 'Knee height',
    where: 'From the middle of the kneecap straight down to the floor.',
    also: 'breeches skirt length leg',
  },
  'ankle-height': {
    name: 'Ankle height',
    where: 'From the ankle bone outside straight down to the floor.',
    also: 'trouser hem boot',
  },
  'thigh-length': {
    name: 'Thigh length',
    where: 'Inside the leg, from the crotch down to the level of the middle of the kneecap.',
    also: 'leg shorts breeches knee',
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
  'trunk-length': {
    name: 'Trunk length',
    where: 'From the bone at the nape straight down to the level of the crotch.',
    also: 'body overall torso',
  },
  'cervical-to-knee-hollow': {
    name: 'Cervical to knee hollow',
    where: 'From the bone at the nape down the back to the hollow behind the knee.',
    also: 'nape coat length dress back',
  },
  'back-waist-length': {
    name: 'Cervical to waist, back',
    where: 'From the bone at the nape down the spine to the waist.',
    note: 'Say in its name which waist you took.',
    also: 'nape neck back length bodice coat',
  },
  'cervical-to-waist-front': {
    name: 'Cervical to waist, front',
    where:
      'From the bone at the nape round the side of the neck, over the breast and down to the waist.',
    note: 'Say in its name which waist you took.',
    also: 'nape front length bodice bust',
  },
  'front-waist-length': {
    name: 'Neck-shoulder to waist, front',
    where:
      'From the side of the neck, where it meets the shoulder, over the breast and down to the waist.',
    note: 'Say in its name which waist you took.',
    also: 'front length bodice bust',
  },
  'cervical-to-breast-point': {
    name: 'Cervical to breast point',
    where: 'From the bone at the nape round the side of the neck to the point of the breast.',
    also: 'nape bust dart apex bodice halter',
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
  'hand-length': {
    name: 'Hand length',
    where: 'From the crease of the wrist to the tip of the longest finger, hand open.',
    also: 'glove mitten pocket depth',
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
  'shoulder-breadth': {
    name: 'Shoulder breadth, straight',
    where:
      'From the edge of one shoulder bone to the other in a straight line, a stick held across.',
    note: 'Not over the back: that is the shoulder width.',
    also: 'biacromial across wide bone',
  },
  'back-width': {
    name: 'Back width',
    where: 'Across the back from one armpit’s fold to the other, arms down.',
    also: 'broad across blades interscye',
  },
  'hand-breadth': {
    name: 'Hand breadth',
    where: 'Straight across the knuckles, fingers together, without the thumb.',
    note: 'What a pocket opening is to be wider than.',
    also: 'pocket opening glove knuckles palm',
  },
  'arm-span': {
    name: 'Arm span',
    where: 'From fingertip to fingertip, back to a wall, both arms stretched out level.',
    also: 'reach wide kimono poncho',
  },
} as const satisfies Readonly<Record<string, MeasureSaid>>;
