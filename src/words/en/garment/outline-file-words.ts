/** Outlines read from a drawing in a file, and why one can’t be. */
export const fileWords = {
  title: 'From a drawing in a file',
  about: 'An SVG or a DXF file with closed outlines in true size. Nothing of it leaves this phone.',
  choose: 'Choose the file',
  reading: 'Reading it …',
  back: 'Back',
  found: (count: number) =>
    count === 1
      ? 'One outline was found. Press it to take it.'
      : `${count} outlines were found. Press the one that is this piece.`,
  shape: (place: number, name: string) => (name === '' ? `Outline ${place}` : name),
  size: (wide: string, long: string) => `${wide} wide, ${long} long`,
  open: (count: number) =>
    `${count === 1 ? 'One line doesn’t' : `${count} lines don’t`} close, and ${count === 1 ? 'is' : 'are'} left out: close ${count === 1 ? 'it' : 'them'} in the drawing if a piece is missing.`,
  more: (count: number) => `And ${count} more that can’t be read.`,
  tooFine: (most: number) =>
    `This outline has more than ${most} corners even after it is simplified: draw it with fewer.`,
  units: 'The file doesn’t say how long its units are. One unit of it is:',
  unit: { mm: 'A millimetre', cm: 'A centimetre', in: 'An inch', px: 'A 96th of an inch' },

  notOne: 'Neither an SVG nor a DXF file: save the drawing as one of the two, and choose that.',
  failed:
    'What reads it couldn’t be fetched, or gave up: choose it again with a connection, or save the drawing anew.',
  cannotOpen: 'The phone can’t open this file: choose it again, or another.',
  tooLarge:
    'The file is far larger than a drawing of pieces: save only the outlines, and choose that.',
  damaged: (line: number) =>
    `It can’t be read from about line ${line} on: save the drawing anew, as text and not in its binary form, and choose that.`,
  brokenOff:
    'The file ends before its end: what came last in it is left out. If a piece is missing, save the drawing anew.',
  hostile:
    'It names texts that stand for others, as no drawing of pieces does: save the drawing anew, as a plain file.',
  tooDeep:
    'Its parts are nested deeper than can be followed: take its groups apart, and save it anew.',
  otherUnits: (said: string) =>
    `It says its units are “${said}”, which is no length known here: save it in millimetres.`,
  tooMany: {
    shapes: (most: number) =>
      `It has more than ${most} closed outlines: save the pieces of one garment to a file of their own.`,
    corners: (most: number) =>
      `Its outlines have more than ${most} corners together: save it with fewer, or the pieces one by one.`,
    parts: (most: number) =>
      `Its blocks, put within each other, have more than ${most} parts: take them apart, and save the pieces alone.`,
    lines: (most: number) =>
      `It has more than ${most} lines that close nothing: leave out what is no outline, and save it anew.`,
  },
  nothingClosed: (open: number) =>
    open === 0
      ? 'There is no outline in it: draw each piece as one closed line, and save it anew.'
      : 'None of its lines closes: join each piece to one closed line, and save it anew.',
  noNumber: (name: string) => `${name}: a number in it is none. Draw this one anew.`,
  unknownCurve: (name: string, curve: string) =>
    `${name} is drawn as “${curve}”, which can’t be read here: turn it into a plain path or a polyline, and save it anew.`,
  noPiece: (name: string, why: string) => `${name}: ${why}`,
  crosses: (across: string, up: string) =>
    `two of its lines meet where they shouldn’t, ${across} and ${up} in the drawing: draw it as one line around the piece.`,
  right: (by: string) => `${by} to the right`,
  left: (by: string) => `${by} to the left`,
  up: (by: string) => `${by} up`,
  down: (by: string) => `${by} down`,
  tooFar: (most: string) =>
    `it lies farther than ${most} from where the drawing begins: move it there, and look at the drawing’s units.`,
  wrongSize: (least: string, most: string) =>
    `it measures less than ${least} or more than ${most}: look at the drawing’s units.`,
  nameless: 'One outline',
};
