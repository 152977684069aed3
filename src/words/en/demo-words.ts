/** What the invented garment, and each calculation kept on it, is called. */
export const demoWords = {
  name: 'Bandsman’s waistcoat (invented)',
  kept: {
    side: 'Side seams',
    front: 'Straight front hems',
    back: 'Curved back hem',
    hooks: 'Centre front, seven hooks',
    armhole: 'Armhole strip, middle',
  },
};
