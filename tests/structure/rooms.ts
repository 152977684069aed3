import type { Wall } from './walls.ts';

const room = (may: string, why: string): Wall => ({
  may: may.split(' ').filter(Boolean),
  why,
});

/**
 * The rooms of a folder of the house, in the order of what flows through it: a room may import
 * from itself and from those named, all of which come before it. What stands beside the rooms is
 * under '.', and may import from the rooms named there.
 */
export const ROOMS: Readonly<Record<string, Readonly<Record<string, Wall>>>> = {
  'src/sewing': {
    sources: room('', 'a published figure stands once, whoever works with it'),
    '.': room('sources', 'a run of marks, a refusal and a share are common to every kind of work'),
    wearer: room('. sources', 'who wears it is measured before anything is cut'),
    cloth: room(
      '. sources',
      'cloth is straightened, shrunk and cut in strips, whatever it becomes',
    ),
    shaping: room('. sources', 'a dart and a flare shape a piece, however its edges are finished'),
    pieces: room('. sources', 'a piece and its edges are measured, whatever is sewn to them'),
    seams: room('. sources', 'a seam joins any two layers'),
    hems: room('. cloth sources', 'an edge is turned or bound, in strips of the cloth'),
    fullness: room('. cloth sources', 'what is gathered or folded is cut in strips of the cloth'),
    bands: room('. shaping hems sources', 'a band is a turned edge, and a collar a part of a ring'),
    closures: room('. sources', 'what closes an opening lies in a row of its own'),
    edging: room('. sources', 'holes stand along a strip or an outline'),
    crossing: room('. edging sources', 'two strips cross once each has its holes'),
    lacing: room('. sources', 'a lace goes through holes that are there'),
  },
  'src/garment': {
    '.': room('', 'what earlier versions of the record hold, which are read for ever'),
    record: room('.', 'a record is what is kept, of any version, before anything is worked out'),
    rows: room(
      'record',
      'where marks lie follows from what is asked and made, whichever work it is of',
    ),
    'work-out': room(
      'record rows',
      'a garment is worked out from its record, whoever changes that',
    ),
    actions: room(
      '. record rows work-out',
      'what the maker does changes a record, as it is worked out',
    ),
    next: room(
      'record work-out',
      'what is shown next follows from the answer, whatever was done to get there',
    ),
    share: room(
      'record work-out actions',
      'what is handed on is a record, without what the maker keeps',
    ),
    sheet: room(
      'record work-out next',
      'what is put on paper is what the garment is worked out to, whoever asks for it',
    ),
    materials: room(
      'record rows work-out next',
      'what is to be at hand follows from what works take, and what the maker says of it',
    ),
    backup: room(
      '. record work-out actions',
      'a file holds records, and is compared with what is here before it is taken',
    ),
  },
  'src/tape': {
    numerics: room('', 'calculating with numbers knows nothing of pictures'),
    picture: room('', 'a picture is samples and places, whatever is printed in it'),
    frame: room('picture', 'coordinates along a row need a picture to lie in, and no tape'),
    rows: room(
      'numerics picture frame',
      'a row is sought by its strokes, before any pitch is known',
    ),
    pitch: room('numerics picture frame', 'a pitch is measured along any row, whoever found it'),
    graduations: room(
      'numerics picture frame pitch',
      'which lines are long is seen before any number is',
    ),
    numbers: room(
      'numerics picture frame pitch graduations',
      'numbers are cut out beside lines, before anyone reads them',
    ),
    digits: room(
      'numerics picture',
      'a digit is recognised in its cell, wherever that was cut from',
    ),
    characters: room(
      'picture numbers digits',
      'a page of cut-out numbers is read whatever they label',
    ),
    numbering: room(
      'numerics graduations numbers characters',
      'which line a number labels follows from lines and numbers, not from where they lie',
    ),
    claims: room(
      'picture frame pitch graduations numbers characters numbering',
      'a claim is what lines and numbers say, before it is believed',
    ),
    scales: room(
      'numerics picture frame pitch graduations claims',
      'a scale is a claim that was weighed, in the pixels of the picture',
    ),
    reader: room(
      'picture frame rows pitch graduations numbers characters claims scales',
      'the reader calls each room in turn, and none calls it',
    ),
    touch: room(
      'numerics picture frame pitch graduations scales',
      'a scale by touch is made of lines and touches, and reads no number',
    ),
    live: room(
      'numerics picture frame pitch scales',
      'a tape in sight is followed by what was read of it, and not read anew',
    ),
    '.': room(
      'picture characters scales touch',
      'page and worker exchange what goes in and comes out',
    ),
  },
  'src/lay': {
    '.': room('', 'the search lays outlines, whoever made them'),
    pieces: room('.', 'a piece is an outline before it is laid, whichever way it came in'),
  },
  'src/screens/garment': {
    said: room('', 'a name and a number are said alike, wherever on a garment they stand'),
    parts: room('said', 'a part that several screens have knows none of them'),
    share: room('', 'what is handed on, or comes in, is a garment, whatever is shown of it'),
    add: room('', 'a work is chosen before there is any of it to be shown'),
    home: room('said parts', 'the home leads to every other screen, and has nothing of theirs'),
    order: room('said', 'the order of works is a list of their steps, not of what is in them'),
    works: room('said parts', 'a work is opened by itself, from wherever it was opened'),
    measures: room('said parts works', 'a measure is typed as a field of a work is'),
    decision: room('said parts home works', 'a decision looks as the home and a work do'),
    materials: room(
      'said parts works measures',
      'what is to be at hand is a list looking as that of the measures',
    ),
    outlines: room(
      'said parts works measures',
      'the shape of a piece is typed like other numbers, and knows no cloth',
    ),
    sheet: room(
      'said works materials',
      'paper has the drawing of a work and the list of materials',
    ),
  },
  'src/words/en': {
    published: room('', 'what is quoted stands by itself, whoever is told'),
    common: room('published', 'cloth, marks and places have one name, on every page'),
    calculations: room('published common', 'what a calculation says is for its page alone'),
    outputs: room('', 'a garment asks for the names of numbers, and not for what a page says'),
    body: room('published', 'a measure has one name, whichever garment it is taken for'),
    controls: room('common', 'tiles, pad and following say the same of every calculation'),
    tape: room('', 'what is said of a picture is the same for every number read in it'),
    paper: room('common', 'a page says where marks lie, whatever they are made for'),
    garment: room('common paper', 'what is said of a garment is said on its own pages and sheet'),
    phone: room('', 'what is said of the app and its phone holds for every page'),
  },
};

/** Which room of its folder a file stands in; '.' beside the rooms. */
export function roomOf(path: string, zone: string): string {
  const parts = path.slice(zone.length + 1).split('/');
  return parts.length > 1 ? (parts[0] as string) : '.';
}

/** What is wrong with one file asking for another of the same folder; undefined when nothing is. */
export function roomFault(from: string, to: string): string | undefined {
  const zone = Object.keys(ROOMS).find((one) => from.startsWith(`${one}/`));
  const rooms = zone && ROOMS[zone];
  if (!rooms || !to.startsWith(`${zone}/`)) return undefined;
  const [own, other] = [roomOf(from, zone), roomOf(to, zone)];
  const wall = rooms[own];
  if (!wall) return `${from} is in no room of ${zone}`;
  if (own === other || wall.may.includes(other)) return undefined;
  return `${from} must not import from ${zone}/${other}: ${wall.why}`;
}
