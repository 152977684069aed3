/** Planned beside as made. */
export const garmentMadeWords = {
  mark: (label: string) => `Mark ${label}`,
  runOf: (run: number) => `Run ${run}`,
  planned: (place: string) => `planned ${place}`,
  notPlanned: 'no plan kept',
  asMade: (place: string) => `as made ${place}`,
  asTyped: (typed: string) => `as made “${typed}”: measure it again, with its unit`,
  off: (off: number, by: string) =>
    off === 0 ? 'as planned' : `${by} ${off > 0 ? 'further on' : 'short of it'}`,
};
