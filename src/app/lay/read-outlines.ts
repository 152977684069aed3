import { fileWords as words } from '#words/garment/outline-file-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { MOST_PIECE_CORNERS, type PiecePlace } from '../../garment/record/piece-said.ts';
import { boxOf, type Point } from '../../lay/outline.ts';
import {
  type FileAsked,
  type FileOutcome,
  type FileProblem,
  type FileShape,
  MOST_CHARACTERS,
} from '../../lay/pieces/file/file-problem.ts';
import type { PieceProblem } from '../../lay/pieces/piece-problem.ts';
import { simplified } from '../../lay/pieces/simplify.ts';
import { exactLength, mm } from '../../lengths/length.ts';
import type { FileRead, FoundOutline } from '../../screens/garment/outlines/outline-file.tsx';
import { inUnits } from './lay-units.ts';
import { pieceProblemSaid } from './piece-problem-said.ts';

/** Problems said singly; a damaged file has many of one kind. */
const MOST_SAID = 4;
/** A file's side is one of its corners' ways. */
const POINTS = { kind: 'points' } as const;

/** Reads the outlines of a drawing; never throws, whatever the file is. */
export async function readOutlines(
  file: Pick<File, 'size' | 'arrayBuffer'>,
  bench: Bench,
  unitMm?: number,
): Promise<FileRead> {
  // No character takes more than four bytes.
  if (file.size > 4 * MOST_CHARACTERS) return { kind: 'refused', said: words.tooLarge };
  let text: string;
  try {
    text = decoded(await file.arrayBuffer());
  } catch {
    return { kind: 'refused', said: words.cannotOpen };
  }
  const outcome = await readBy(text, unitMm === undefined ? {} : { unitMm });
  if (!outcome) return { kind: 'refused', said: words.notOne };
  if (!outcome.ok) {
    const { problem } = outcome;
    if (problem.kind === 'no-units') return { kind: 'units' };
    return { kind: 'refused', said: fileProblemSaid(problem, bench) };
  }
  const { shapes, problems, open } = outcome;
  const more = problems.length - MOST_SAID;
  return {
    kind: 'outlines',
    found: shapes.map(foundOutline),
    said: [
      ...(open > 0 ? [words.open(open)] : []),
      ...problems.slice(0, MOST_SAID).map((one) => fileProblemSaid(one, bench)),
      ...(more > 0 ? [words.more(more)] : []),
    ],
  };
}

/** The text of a file: as its first two bytes say it is written (Unicode, byte order mark), else in UTF-8. */
function decoded(bytes: ArrayBuffer): string {
  const [first, second] = new Uint8Array(bytes.slice(0, 2));
  const isBig = first === 0xfe && second === 0xff;
  const isLittle = first === 0xff && second === 0xfe;
  const text = new TextDecoder(isBig ? 'utf-16be' : isLittle ? 'utf-16le' : 'utf-8').decode(bytes);
  // Old files end their lines otherwise.
  return text.includes('\n') ? text : text.replaceAll('\r', '\n');
}

/** A DXF file begins with a group code on a line of its own. */
const DXF = /^\s*\d{1,4}\s*\r?\n/;

async function readBy(text: string, asked: FileAsked): Promise<FileOutcome | undefined> {
  if (/^\s*</.test(text)) {
    return (await import('../../lay/pieces/file/read-svg.ts')).readSvg(text, asked);
  }
  if (DXF.test(text)) {
    return (await import('../../lay/pieces/file/read-dxf.ts')).readDxf(text, asked);
  }
  return undefined;
}

/** An outline as a piece has it: what is up in the drawing is its top, and lies at 0. */
function foundOutline({ name, outline }: FileShape): FoundOutline {
  const few = simplified(outline);
  const { x0, x1, y0, y1 } = boxOf(few);
  const place = ([x, y]: Point): PiecePlace => [inUnits(y1 - y), inUnits(x - x0)];
  return {
    name,
    form: { kind: 'points', points: few.map(place) },
    size: { long: inUnits(y1 - y0), wide: inUnits(x1 - x0) },
    ...(few.length > MOST_PIECE_CORNERS && { refused: words.tooFine(MOST_PIECE_CORNERS) }),
  };
}

/** Why a file gives nothing, or not all of it. */
function fileProblemSaid(problem: FileProblem, bench: Bench): string {
  const nameOf = (name: string) => (name === '' ? words.nameless : name);
  switch (problem.kind) {
    case 'too-large':
      return words.tooLarge;
    case 'damaged':
      return words.damaged(problem.line);
    case 'broken-off':
      return words.brokenOff;
    case 'hostile':
      return words.hostile;
    case 'too-deep':
      return words.tooDeep;
    case 'no-units':
      return words.units;
    case 'other-units':
      return words.otherUnits(problem.said);
    case 'too-many':
      return words.tooMany[problem.what](problem.most);
    case 'nothing-closed':
      return words.nothingClosed(problem.open);
    case 'no-number':
      return words.noNumber(nameOf(problem.name));
    case 'unknown-curve':
      return words.unknownCurve(nameOf(problem.name), problem.curve);
    case 'no-piece':
      return words.noPiece(nameOf(problem.name), noPieceSaid(problem.problem, bench));
  }
}

/** Why a drawn outline is none: by where it is in its drawing, which has no points to be typed again. */
function noPieceSaid(problem: PieceProblem, bench: Bench): string {
  const long = (of: number) => onTape(exactLength(mm(of)), bench);
  if (problem.kind === 'crosses') {
    const { x, y } = problem;
    const [across, up] = [x < 0 ? words.left : words.right, y < 0 ? words.down : words.up];
    return words.crosses(across(long(Math.abs(x))), up(long(Math.abs(y))));
  }
  if (problem.kind !== 'out-of-range') return pieceProblemSaid(problem, bench, POINTS);
  const { field, most } = problem;
  const isPlace = field === 'x' || field === 'y';
  return isPlace ? words.tooFar(long(most)) : words.wrongSize(long(problem.least), long(most));
}
