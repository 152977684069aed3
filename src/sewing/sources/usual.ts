import { inches, mm } from '../../lengths/length.ts';
import { COMFORTABLE } from './lacing.ts';
import { COMMON_BUTTON_LINES } from './sizes.ts';

/** Who says what is usual: common practice without a source, tables of buttons, or a handbook and common practice. */
export type UsualSource = 'common' | 'button-sizes' | 'lace-pieces';

/** What a measure commonly is: a length in 1/8000 mm, or a plain number. Both ends are usual. */
export interface Usual {
  least: number;
  most: number;
  source: UsualSource;
}

const common = (least: number, most: number): Usual => ({ least, most, source: 'common' });
const commonMm = (least: number, most: number): Usual => common(mm(least), mm(most));

const LINES = COMMON_BUTTON_LINES.value;

/**
 * The range each measure of the bench commonly lies in. What is outside is asked about
 * at its field, and worked out all the same. Wide on purpose: a question asked for what
 * is only rare would soon be passed over.
 */
export const USUAL = {
  opening: commonMm(20, 3000),
  closurePitch: commonMm(5, 300),
  closures: common(1, 60),
  closureWidth: commonMm(2, 60),
  endMargin: commonMm(0, 200),
  setBack: commonMm(0, 20),
  lap: commonMm(3, 150),
  button: {
    least: inches((LINES[0] ?? 14) / 40),
    most: inches((LINES.at(-1) ?? 60) / 40),
    source: 'button-sizes',
  },
  buttonThick: commonMm(1, 20),
  hemDepth: commonMm(3, 250),
  turn: commonMm(2, 250),
  edgeStitch: commonMm(0.5, 25),
  clothThick: commonMm(0.05, 8),
  garmentLength: commonMm(50, 3000),
  chord: commonMm(20, 2000),
  around: commonMm(50, 10_000),
  wearingEase: commonMm(1, 300),
  across: commonMm(30, 2000),
  seamAllowance: commonMm(3, 50),
  seamTrim: commonMm(1.5, 20),
  girthChange: commonMm(1, 300),
  seams: common(1, 24),
  curveRadius: commonMm(10, 5000),
  clipOpening: commonMm(0.5, 10),
  curveLength: commonMm(10, 5000),
  ease: common(0, 20),
  cornerAngle: common(20, 160),
  stripLength: commonMm(20, 20_000),
  stripWidth: commonMm(5, 200),
  holePitch: commonMm(2, 60),
  holeMargin: commonMm(1.5, 50),
  punch: commonMm(0.5, 12),
  teeth: common(2, 12),
  holes: common(2, 1000),
  layers: commonMm(0.2, 15),
  lace: commonMm(0.5, 20),
  outside: commonMm(0, 15),
  tail: commonMm(0, 1000),
  lacePiece: {
    least: mm(200),
    most: COMFORTABLE.value * 5, // five times what is comfortable: pieces that are pulled through
    source: 'lace-pieces',
  },
  dartWidth: commonMm(3, 150),
  /** Along a dart, or an edge it is drawn up over. */
  dartLong: commonMm(20, 500),
  pleatWidth: commonMm(5, 300),
  pleatDepth: commonMm(3, 200),
  pleats: common(1, 150),
  flatPart: commonMm(5, 2000),
  clothWidth: commonMm(300, 3200),
  /** A quarter of a neckline or so. */
  neckPart: commonMm(40, 250),
  collarDeep: commonMm(10, 250),
  bandWide: commonMm(10, 150),
  bandEase: commonMm(0, 100),
  boundWidth: commonMm(2, 80),
  cord: commonMm(1, 25),
  biasWidth: commonMm(10, 150),
  biasLong: commonMm(200, 30_000),
  stripDeep: commonMm(20, 2000),
  /** Of one length from notch to notch. */
  matchParts: common(1, 8),
  pieces: common(1, 60),
  /** Between the marks of a sample that is washed. */
  sample: commonMm(100, 1200),
  /** Per cent of cloth that was not washed. */
  shrinkage: common(0, 12),
  stitchMm: common(0.5, 7),
  stitchLong: commonMm(0.5, 12),
  /** All layers of a seam. */
  seamThick: commonMm(0.1, 15),
  threadEnd: commonMm(0, 150),
  /** A thread that is sewn with by hand. */
  workingThread: commonMm(200, 1500),
  /** Per cent of what is sewn. */
  threadWaste: common(5, 30),
  /** Thread on a spool, a cone or a bobbin. */
  spool: commonMm(3000, 10_000_000),
  tex: common(8, 300),
  stitchesPerInch: common(4, 40),
  stitchesPerCm: common(1.5, 16),
} as const satisfies Readonly<Record<string, Usual>>;

export type Measure = keyof typeof USUAL;
