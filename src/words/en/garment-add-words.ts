/** Adding to a garment. */
export const garmentAddWords = {
  title: (name: string) => `Add to ${name}`,
  about: 'What is added takes numbers from the garment, and gives it its own.',
  list: 'What to add',
  measure: 'A measure or number',
  putBack: (work: string) => `Put ${work} back`,
  all: 'All calculations, settings',
  back: 'Back to the garment',
  /** What a work of each calculation is called until the maker names it. */
  works: {
    seam: 'Seam',
    pleats: 'Pleats',
    hem: 'Hem',
    corner: 'Mitred corner',
    facing: 'Facing',
    closures: 'Closures',
    buttonhole: 'Buttonhole',
    centre: 'Centre by counting',
    edging: 'Edging strip',
    lacing: 'Lacing',
    crossing: 'Crossing strips',
    parts: 'Equal parts',
    sizes: 'Stitches, buttons, needles',
  },
};
