import { buttonholeQuotes } from '../published/published-buttonhole-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** Closings that are no single row. */
export const groupedWords = {
  title: CALCULATION_NAMES.grouped,
  labels: {
    kind: 'Closing',
    opening: 'Edge, top to bottom',
    groups: 'Groups',
    each: 'In each group',
    within: 'From one to the next in a group',
    top: 'Top edge to the first',
    bottom: 'Last to the bottom edge',
    lap: 'Overlap, from the underlap’s end',
    from: 'Overlap’s end to its fastener',
    hole: 'Buttonhole along the band, long',
    around: 'Waist, all round',
    loops: 'Belt loops',
    belt: 'Belt, wide',
    ease: 'To spare under a loop',
    turn: 'Turned in, each end',
    drop: 'Hanger hangs down',
    seam: 'Caught in, each end',
    thing: 'Thick, what it goes round',
    thick: 'Cloth, thick',
  },
  kind: {
    groups: 'In groups',
    lap: 'Band’s lapped end',
    loops: 'Belt loops',
    hanger: 'Hanger',
    fold: 'Snap over a fold',
  },
  fromFold: 'Outside of the fold to each half',
  beltThick: 'Belt, thick',
  none: 'none',
  noHole: 'none: hook or snap',
  after: {
    groups: 'clear between groups, fastener to fastener',
    lap: 'from the underlap’s end to the mate',
    loops: 'of strip for all loops',
    hanger: 'of tape for the hanger',
    fold: 'between the halves, along the flat strap',
  },
  sentence: {
    groups:
      'Mark every place from the top edge. Mark the other half from the same edge, with the same numbers; a row elsewhere can follow these places.',
    lap: 'Lay the ends over each other as they will be worn. Mark the fastener from the overlap’s end, its mate from the underlap’s end, and sew the mate last.',
    loops:
      'Cut the finished strip into loops. The first goes to the centre back; measure on from there both ways with the same numbers, so that the fronts match.',
    hanger: 'Fold it in half and catch both ends in the neck seam, at the centre back.',
    fold: 'Mark both halves on the flat strap, each half of this from the middle of the fold; try it round before you set them.',
  },
  count: 'Fasteners, together',
  fastener: 'From the overlap’s end to the fastener',
  hole: 'Buttonhole, from the overlap’s end',
  holeOf: (from: string, to: string) => `from ${from} to ${to}`,
  loop: 'Each loop, cut',
  places: 'Fasteners, from the top edge',
  place: 'Fastener',
  loopPlaces: 'Loops, from the centre back',
  loopPlace: 'Loop',
  noGroups: 'The groups hardly stand apart: they won’t be seen as groups.',
  atFront:
    'An even number puts a loop on the centre front, over the opening: take one fewer or one more.',
  holeLast:
    'Cut buttonholes last of all, after both halves are marked: pins across both ends, never towards the hand.',
  tryOn: 'Pin both halves and try it on, closed, before the second half is sewn.',
  figure: {
    groups: 'The edge from its top, with its groups',
    lap: 'The ends of the band, the overlap above',
    loops: 'The waist laid straight from the centre back, and the strip for its loops',
    hanger: 'The tape of the hanger, flat',
    fold: 'The strap from its side, folded, and flat below',
  },
  groupCount: (count: number) => `${count} ${count === 1 ? 'group' : 'groups'}`,
  eachCount: (count: number) => `${count} in each`,
  loopCount: (count: number) => `${count} ${count === 1 ? 'loop' : 'loops'}`,
  formula: {
    room: (opening: string, top: string, bottom: string, room: string) =>
      `${opening} − ${top} − ${bottom} = ${room}. `,
    between: (room: string, groups: number, gaps: number, within: string, between: string) =>
      `(${room} − ${groups} × ${gaps} × ${within}) ÷ ${groups === 1 ? 2 : groups - 1} = ${between}.`,
    less: (from: string, by: string, left: string) => `${from} − ${by} = ${left}.`,
    more: (from: string, by: string, to: string) => `${from} + ${by} = ${to}.`,
    loop: (belt: string, thick: string, ease: string, turn: string, each: string) =>
      `${belt} + 2 × ${thick} + ${ease} + 2 × ${turn} = ${each}. `,
    strip: (loops: number, each: string, strip: string) => `${loops} × ${each} = ${strip}.`,
    hanger: (drop: string, seam: string, tape: string) => `2 × ${drop} + 2 × ${seam} = ${tape}.`,
    fold: (at: string, thing: string, thick: string, apart: string) =>
      `2 × ${at} + 1.5708 × (${thing} + ${thick}) − ${thing} − 2 × ${thick} = ${apart}.`,
  },
  geometry: 'Geometry.',
  groupSource: 'Geometry: as many spaces as groups, less one. One group lies in the middle.',
  holeSource: `${quoted(buttonholeQuotes['buttonhole-past-centre'])}.`,
  easeSource: 'Geometry; what is to spare is common practice, no source.',
  foldSource:
    'Geometry, derived here: along the middle of the cloth; 1.5708 is half of π, round the bend.',
};
