/** What the invented garment, its own numbers and each work on it are called. */
export const demoWords = {
  name: 'Bandsman’s waistcoat (invented)',
  front: 'Front edge',
  round: 'Armhole, round',
  chest: 'Chest girth (invented)',
  waist: 'Natural waist girth (invented)',
  nape: 'Cervical to waist, back (invented)',
  side: 'Side seams, French',
  fronts: 'Front hems',
  back: 'Back hem, curved',
  hooks: 'Centre front, seven hooks',
  strip: 'Armhole strip',
  lace: 'Armhole lace',
  fit: 'Chest, with ease',
};
