/** Adding to a garment. */
export const garmentAddWords = {
  title: (name: string) => `Add to ${name}`,
  about: 'What is added takes numbers from the garment, and gives it its own.',
  measure: 'A measure or number',
  materials: 'Materials: what to buy',
  lay: 'Lay the pieces on the cloth',
  putBack: (work: string) => `Put ${work} back`,
  all: 'All calculations, settings',
  back: 'Back to the garment',
};
