/** A lay on paper, at reduced scale. */
export const laySheetWords = {
  title: 'The lay on paper',
  of: (garment: string, cloth: string) => `${garment}: ${cloth}`,
  open: (width: string) => `Cloth ${width} wide, washed and without its selvedges, laid open.`,
  folded: (width: string) =>
    `Cloth ${width} wide when open, washed and without its selvedges, folded along its length.`,
  takes: (length: string) => `The lay takes ${length}.`,
  buy: (length: string) => `To buy: ${length}.`,
  found:
    'Found for the sizes and the cloth as they are now; when they change it is to be found anew.',
  scale: (times: string) => `Drawn ${times} times smaller than it is.`,
  edgesOpen: (width: string) => `${width} wide. Above, the cut end; left and right, the selvedges.`,
  edgesFolded: (width: string) => `${width} wide. Above, the cut end; left, the fold.`,
  long: (length: string) => `${length} long`,
  unnumbered:
    'A piece without its number on the drawing is too small for it there: find it by where it lies.',
  pageOf: (page: number, pages: number) => `${page} of ${pages}`,
  pages: (pages: number) =>
    pages === 1 ? 'One page. Press it to read it.' : `${pages} pages. Press one to read it.`,
  page: (page: number, pages: number) => `Page ${page} of ${pages}`,
};
