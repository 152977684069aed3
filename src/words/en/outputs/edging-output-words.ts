/** What a strip of holes gives, and what the hand does for it. */
export const edgingOutputWords = {
  cutStrip: 'Strip, long',
  cutWidth: 'Strip, wide',
  cut: 'Cut the strip to length',
  cutWide: 'Cut the strip to width',
  blade:
    'Cut on a mat along a rule with an edge, away from the hand that holds. Where you work with others, local rules and qualified practice come first.',
  row: ['Holes', 'Holes of row 2'],
  side: (row: number, side: number) => `Holes of row ${row}, side ${side}`,
  punch: ['Punch', 'Punch row 2'],
  punchSide: (row: number, side: number) => `Punch row ${row}, side ${side}`,
  count: ['How many holes', 'How many holes in row 2'],
  all: 'Holes in all',
  pitch: ['Hole to hole, widest', 'Hole to hole in row 2, widest'],
  span: 'First to last hole',
  margin: 'Edge to hole, centre',
} as const;
