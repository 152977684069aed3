/** A measure: its name in the standards, where and how it is taken, and plain words it is looked for by. */
export interface MeasureSaid {
  name: string;
  where: string;
  /** What it is not, or what it is for. */
  note?: string;
  also: string;
}

/** What is measured round the body. */
export const girthMeasures = {
  'head-girth': {
    name: 'Head girth',
    where: 'Round the widest part of the head, above the ears and over the brow.',
    note: 'What a neck opening has to pass.',
    also: 'hat cap hood size neck opening',
  },
  'neck-girth': {
    name: 'Neck girth',
    where: 'Round the neck, 2 cm below the Adam’s apple, square to it.',
    also: 'collar shirt stand throat band',
  },
  'neck-base-girth': {
    name: 'Neck-base girth',
    where:
      'Round the foot of the neck: over the bone at the nape, both sides of the neck, and the hollow in front. A fine chain laid there shows it.',
    also: 'neckline close collar',
  },
  'bust-girth': {
    name: 'Bust girth',
    where: 'Round the fullest part of the bust and under the arms, level, breathing quietly.',
    also: 'bosom breast round bodice dress woman',
  },
  'chest-girth': {
    name: 'Chest girth',
    where:
      'Round the fullest part of the chest, under the arms and over the shoulder blades, level, breathing quietly.',
    also: 'round shirt coat waistcoat man breast',
  },
  'upper-chest-girth': {
    name: 'Upper chest girth',
    where: 'Round the body close under the arms and above the bust, level behind, arms down.',
    note: 'The high bust. Where the bust is 5 cm (2 in) more than this, or over, a pattern is chosen by this, the smaller size (an extension bulletin on pattern alteration), and its front made wider.',
    also: 'high bust above over armpit size pattern choose bodice full',
  },
  'underbust-girth': {
    name: 'Underbust girth',
    where: 'Round the body close below the bust, level.',
    also: 'bra band corset stays ribs high waist',
  },
  'waist-girth': {
    name: 'Waist girth',
    where:
      'Level, midway between the lowest rib and the top of the hip bone at the side. Find the rib on a deep breath, mark and measure breathing quietly.',
    note: 'Not where a belt settles: that is the natural waist.',
    also: 'middle belly round trousers skirt standard',
  },
  'natural-waist-girth': {
    name: 'Natural waist girth',
    where:
      'Where a belt settles by itself: tie one on, mark it in front, behind and at both sides, and follow it. It need not be level.',
    note: 'Not the level waist of the standard, midway between rib and hip bone.',
    also: 'middle belly round belt waistband skirt trousers waistcoat',
  },
  'hip-girth': {
    name: 'Hip girth',
    where:
      'Round the fullest part of the seat, level, feet together. Look from the side where that is.',
    also: 'seat bottom buttock round skirt trousers',
  },
  'shoulder-girth': {
    name: 'Shoulder girth, arms in',
    where: 'Round both shoulders and arms at their widest, level, arms hanging.',
    note: 'What a cape or a shawl collar lies round.',
    also: 'cape cloak shawl poncho arms',
  },
  'trunk-circumference': {
    name: 'Trunk circumference',
    where:
      'From the middle of one shoulder down in front, between the legs, and up the back to the same place.',
    also: 'overall one-piece jumpsuit leotard vertical',
  },
  'armscye-girth': {
    name: 'Armscye girth',
    where:
      'Round the joint of arm and body, over the shoulder bone and through the armpit, arm down.',
    also: 'armhole sleeve head shoulder',
  },
  'upper-arm-girth': {
    name: 'Upper-arm girth',
    where: 'Round the thickest part of the upper arm, arm down and easy.',
    also: 'biceps sleeve width',
  },
  'elbow-girth': {
    name: 'Elbow girth',
    where: 'Round the elbow, over its point, arm bent.',
    also: 'sleeve arm',
  },
  'forearm-girth': {
    name: 'Forearm girth, bent',
    where: 'Round the thickest part of the forearm, close below the elbow, arm bent, hand a fist.',
    note: 'What a close sleeve is pushed up over.',
    also: 'lower arm sleeve gauntlet rolled',
  },
  'wrist-girth': {
    name: 'Wrist girth',
    where: 'Round the wrist, over its bone on the outside.',
    also: 'cuff sleeve end',
  },
  'hand-girth': {
    name: 'Hand girth',
    where: 'Round the knuckles of the open hand, fingers together, without the thumb.',
    note: 'A closed cuff has to pass it; with the thumb tucked in it is more.',
    also: 'cuff glove pocket opening knuckles',
  },
  'thigh-girth': {
    name: 'Thigh girth',
    where:
      'Round the thickest part of the thigh, close under the seat, level, weight on both feet.',
    also: 'leg trousers breeches',
  },
  'mid-thigh-girth': {
    name: 'Mid-thigh girth',
    where: 'Round the thigh, level, halfway between the crotch and the kneecap.',
    also: 'leg trousers shorts breeches',
  },
  'lower-thigh-girth': {
    name: 'Lower thigh girth',
    where: 'Round the thigh, level, close above the kneecap.',
    also: 'leg shorts breeches stocking garter',
  },
  'knee-girth': {
    name: 'Knee girth',
    where: 'Round the knee, over the middle of the kneecap, leg straight.',
    also: 'leg breeches trousers',
  },
  'lower-knee-girth': {
    name: 'Lower knee girth',
    where: 'Round the leg, level, close below the kneecap.',
    also: 'leg breeches band buckle garter',
  },
  'calf-girth': {
    name: 'Calf girth',
    where: 'Round the thickest part of the calf.',
    also: 'leg stocking gaiter breeches boot',
  },
  'minimum-leg-girth': {
    name: 'Minimum leg girth',
    where: 'Round the leg where it is thinnest, above the ankle bones.',
    also: 'leg gaiter stocking trouser hem cuff',
  },
  'ankle-girth': {
    name: 'Ankle girth',
    where: 'Round the leg over both ankle bones.',
    also: 'leg trouser hem gaiter',
  },
  'heel-girth': {
    name: 'Heel and ankle girth',
    where: 'Round the heel and the bend of the foot in front.',
    note: 'What a closed trouser hem has to pass.',
    also: 'foot trouser leg opening hem instep',
  },
} as const satisfies Readonly<Record<string, MeasureSaid>>;
