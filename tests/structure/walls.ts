import { roomFault } from './rooms.ts';
import { askedFor, isOurs, leadsTo, type Source } from './sources.ts';

/** What may be imported, and the reason it is no more, printed with each fault. */
export interface Wall {
  may: readonly string[];
  why: string;
}

const PURE =
  'arithmetic must not know who asks for it, where it is shown or kept, or in what words';

/** Who may import whom, besides files of the same folder. Nothing else may be imported. */
export const WALLS: Readonly<Record<string, Wall>> = {
  'src/lengths': { may: [], why: PURE },
  'src/sewing': { may: ['src/lengths'], why: PURE },
  'src/tape': { may: ['src/lengths', 'src/sewing'], why: PURE },
  'src/lay': { may: ['src/lengths', 'src/sewing'], why: PURE },
  'src/drawing': { may: ['src/lengths', 'src/sewing'], why: PURE },
  'src/calculation': {
    may: ['src/lengths', 'src/sewing', 'src/drawing', 'src/words'],
    why: 'what a calculation is must not know which there are, nor where it is shown or kept',
  },
  'src/calculations': {
    may: ['src/lengths', 'src/sewing', 'src/drawing', 'src/calculation', 'src/words'],
    why: 'a calculation is fields, work, answer and figure, to be shown and kept by others',
  },
  'src/garment': { may: ['src/lengths', 'src/sewing', 'src/calculation'], why: PURE },
  'src/workers': {
    may: ['src/tape', 'src/lay', 'src/drawing'],
    why: 'a worker is a message in, a pure function and a message out',
  },
  'src/storage': {
    may: ['src/lengths', 'src/garment'],
    why: 'what is kept is lengths and records',
  },
  'src/camera': {
    may: ['src/tape'],
    why: 'the camera makes grey pictures, hands them to the reader and asks what it read',
  },
  'src/words': { may: ['src/lengths', 'src/sewing'], why: 'words are said about values, by all' },
  'src/controls': {
    may: ['src/lengths', 'src/sewing', 'src/drawing', 'src/calculation', 'src/words'],
    why: 'a control is used by any screen, so it knows none, and keeps nothing',
  },
  'src/screens': {
    may: [
      'src/lengths',
      'src/sewing',
      'src/garment',
      'src/drawing',
      'src/calculation',
      'src/camera',
      'src/controls',
      'src/words',
    ],
    why: 'a screen is handed what it needs by the app, so that it can be tried alone',
  },
  'src/app': {
    may: [
      'src/lengths',
      'src/sewing',
      'src/garment',
      'src/drawing',
      'src/storage',
      'src/camera',
      'src/tape',
      'src/lay',
      'src/calculation',
      'src/calculations',
      'src/controls',
      'src/screens',
      'src/words',
    ],
    why: 'the app puts everything together; workers it starts by URL',
  },
  'service-worker': {
    may: [],
    why: 'a worker kept from an old build must not share code with a new',
  },
};

/** Packages a folder may use; one that isn't listed here may use none. */
const PACKAGES: Readonly<Record<string, RegExp>> = {
  // Outlines put together: exact over whole numbers, tried by many, and without a page. By its
  // files, as its index brings twice as much along.
  'src/lay': /^clipper2-ts\/dist\/(Core|Engine)\.js$/,
  'src/storage': /^idb-keyval$/,
  'src/workers': /^@cantoo\/pdf-lib$/,
  'src/controls': /^preact(\/|$)/,
  'src/screens': /^preact(\/|$)/,
  'src/app': /^(preact(\/.*)?|workbox-window|virtual:licences)$/,
  'service-worker': /^workbox-/,
};

/**
 * Every import that goes through a wall, or nowhere, as a sentence with its reason.
 * @param styles the style files there are
 */
export function brokenWalls(sources: readonly Source[], styles: readonly string[] = []): string[] {
  const there = new Set([...sources.map(({ path }) => path), ...styles]);
  return sources.flatMap((source) =>
    askedFor(source.code).flatMap((asked) => fault(source.path, asked, there) ?? []),
  );
}

function fault(from: string, asked: string, there: ReadonlySet<string>): string | undefined {
  const zone = zoneOf(from);
  const wall = WALLS[zone];
  if (!wall) return `${from} is in no folder of the house`;
  if (!isOurs(asked)) {
    if (PACKAGES[zone]?.test(asked)) return undefined;
    return `${from} must not use the package ${asked}: ${wall.why}`;
  }
  const to = leadsTo(from, asked);
  const toZone = zoneOf(to);
  const startsWorker = zone === 'src/app' && toZone === 'src/workers';
  if (toZone !== zone && !startsWorker && !wall.may.includes(toZone)) {
    return `${from} must not import from ${toZone}: ${wall.why}`;
  }
  const apart = APART[zone];
  if (apart && toZone === zone && partOf(from) !== partOf(to) && from !== LIST) {
    return `${from} must not import from another ${apart}, ${to}: ${wall.why}`;
  }
  if (toZone === 'src/words' && zone !== toZone && asked.startsWith('.')) {
    return `${from} must ask for '#words/…' instead of ${asked}: it must not know which language it is`;
  }
  const wrongRoom = roomFault(from, to);
  if (wrongRoom) return wrongRoom;
  if (there.has(to)) return undefined;
  return `${from} asks for ${asked}, which is not a file: an import carries its .ts or .tsx ending`;
}

/** What stands in these folders must not import from each other. */
const APART: Readonly<Record<string, string>> = {
  'src/screens': 'screen',
  'src/calculations': 'calculation',
};

/** The one file that names every calculation. */
const LIST = 'src/calculations/list.ts';

/** A screen or a calculation is a file of its folder, or a folder there: `home.tsx`, `closures/fields.ts`. */
function partOf(path: string): string | undefined {
  return path.split('/')[2]?.replace(/\.\w+$/, '');
}

function zoneOf(path: string): string {
  return path.split('/', path.startsWith('src/') ? 2 : 1).join('/');
}

/** Circles of files that import each other, each as `a → b → a`. */
export function importCircles(sources: readonly Source[]): string[] {
  const next = new Map(
    sources.map(({ path, code }) => [
      path,
      askedFor(code).flatMap((asked) => (isOurs(asked) ? leadsTo(path, asked) : [])),
    ]),
  );
  const circles: string[] = [];
  const done = new Set<string>();
  const walk = (path: string, trail: readonly string[]) => {
    const met = trail.indexOf(path);
    if (met >= 0) circles.push([...trail.slice(met), path].join(' → '));
    if (met >= 0 || done.has(path)) return;
    for (const to of next.get(path) ?? []) walk(to, [...trail, path]);
    done.add(path);
  };
  for (const path of next.keys()) walk(path, []);
  return circles;
}

/** Files that only hand on what another file has: whoever wants it can import that file. */
export function onlyHandsOn({ code }: Source): boolean {
  const handed =
    /\bexport\s+(?:type\s+)?(?:\*(?:\s+as\s+\w+)?|\{[^}]*\})\s*(?:from\s*'[^']*')?\s*;/g;
  const imported = /\bimport\s+[^;]*;/g;
  return handed.test(code) && code.replace(handed, '').replace(imported, '').trim() === '';
}
