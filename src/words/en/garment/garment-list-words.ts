/** The list of garments. */
export const garmentListWords = {
  about: 'What is kept here stays on this phone. A backup is one file, yours to put away.',
  none: 'Nothing is kept yet. Make a garment, or look at an invented one.',
  demo: {
    waistcoat: 'Show an invented waistcoat',
    skirt: 'Show an invented skirt',
    shirt: 'Show an invented shirt',
  },
  search: 'Search by name',
  noneFound: (sought: string) => `No garment is called “${sought}”.`,
  more: (name: string) => `More with ${name}`,
  handOn: 'Hand it on',
  copy: 'Copy as a new start',
  putAway: 'Put away',
  undo: (name: string) => `Undo: bring back ${name}`,
  holds: (works: number, facts: number) => {
    const kept = works === 0 ? 'nothing on it yet' : works === 1 ? '1 work' : `${works} works`;
    return facts === 0 ? kept : `${kept}, ${facts} made`;
  },
  backup: 'Save a backup',
  shareBackup: 'Send a backup',
  restore: 'Restore from a file',
  lastBackup: (when: string) => `Last backup: ${when}.`,
  noBackup: 'No backup yet. One file keeps what this phone could lose.',
};
