/** What tiers give, and what the hand does for them. */
export const tiersOutputWords = {
  tier: (i: number) => (what: string) => `Tier ${i}: ${what}`,
  deep: 'depth, cut',
  cutDeep: 'cut its strips so deep',
  strip: 'strip to cut, joined',
  cutStrip: 'cut its strips and join them so long',
  along: 'along, sewn',
  marks: 'marks on its upper edge',
  mark: 'mark its upper edge',
  edgeMarks: 'marks on the edge above',
  markEdge: 'mark the edge above',
  clothWide: 'How wide that cloth is',
  cloth: 'Cloth for all tiers',
  full: 'Last tier, times the first edge',
  long: 'Depths together',
  left: 'Of the length left',
};
