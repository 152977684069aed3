import type { Bench } from '../../controls/bench.ts';
import type { Answer, Line, Offer } from '../../controls/calculation.ts';
import { exactly } from '../../controls/tape-text.ts';
import { crossingFigure } from '../../drawing/crossing-figure.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { showExact, shownText } from '../../lengths/show-length.ts';
import { type Crossed, linesUnder } from '../../sewing/crossing-holes.ts';
import type { Crossing, CrossingPlan, UpperHole } from '../../sewing/strip-crossing.ts';
import { crossingWords as words } from '../../words/crossing-words.ts';
import { holeWords } from '../../words/hole-words.ts';

type Show = (x: ExactLength) => string;

/** New holes listed; all of them are drawn. */
const LISTED = 24;
/** A shift of less that clears nothing is none. */
const NO_SHIFT = exactLength(400);
/** Decimals that give any 1/8000 mm back when they are read again, in any unit. */
const ALL_PLACES = 6;

/** Two crossing strips as an answer. */
export function crossingAnswer(input: Crossed, plan: CrossingPlan, bench: Bench): Answer {
  const { asLaid, best } = plan;
  const show: Show = (x) => exactly(x, bench);
  const moved = movesTo(best, asLaid);
  const chosen = moved ? best : asLaid;
  const fresh = chosen.holes.filter(({ meets }) => meets !== 'shared');
  const near = fresh.filter(({ nearEdge }) => nearEdge).length;
  return {
    headline: {
      number: showExact(
        moved ? best.shift : exactLength(0),
        bench.unit,
        bench.unit === 'mm' ? 2 : 3,
      ),
      after: moved ? words.move : words.stay(asLaid.clashes),
    },
    sentence:
      chosen.clashes === 0
        ? words.clear(chosen.room === undefined ? undefined : show(chosen.room))
        : words.least(chosen.clashes),
    lines: [
      { label: words.laid, value: meetingsOf(asLaid) },
      ...(moved ? [{ label: words.moved, value: meetingsOf(best) }] : []),
      ...(chosen.room === undefined ? [] : [{ label: words.room, value: show(chosen.room) }]),
      ...newHoleLines(fresh, show),
    ],
    offers: offersOf(input, plan, moved, bench),
    warnings: [
      ...(chosen.clashes > 0 ? [words.clashing(chosen.clashes)] : []),
      ...(chosen.clashes > 0 && !plan.otherPitch ? [words.noPitch] : []),
      ...(near > 0 ? [words.nearEdge(near)] : []),
    ],
    cautions: [holeWords.punch],
    runs: [],
    figures: [{ name: words.figure, figure: crossingFigure(drawnOf(input, chosen)) }],
    workings: [{ formula: words.rule, source: words.derived }],
  };
}

/** Only a shift that betters what lies there is worth the moving. */
function movesTo(best: Crossing, asLaid: Crossing): boolean {
  const room = (one: Crossing) => one.room ?? Number.POSITIVE_INFINITY;
  if (best.clashes !== asLaid.clashes) return best.clashes < asLaid.clashes;
  return best.shift >= NO_SHIFT && room(best) > room(asLaid) + NO_SHIFT;
}

function meetingsOf({ holes, shared, clashes }: Crossing): string {
  return words.laidIs(shared, holes.length - shared - clashes, clashes);
}

function newHoleLines(holes: readonly UpperHole[], show: Show): Line[] {
  const inOrder = [...holes].sort((one, other) => one.along - other.along);
  const listed = inOrder.slice(0, LISTED).map(({ along, across }, i) => ({
    label: words.newHole(i + 1),
    value: words.place(
      show(exactLength(Math.abs(along))),
      along >= 0,
      show(exactLength(Math.abs(across))),
      Math.abs(across) < 1 ? 'middle' : across < 0 ? 'first' : 'second',
    ),
  }));
  const more = inOrder.length - listed.length;
  return [
    { label: words.newHoles, value: String(holes.length) },
    ...listed,
    ...(more > 0 ? [{ label: '', value: words.further(more) }] : []),
  ];
}

/** What is taken is typed to the last digit: rounded, a clear hole may clash. */
function offersOf(
  { upper }: Crossed,
  { best, otherPitch }: CrossingPlan,
  moved: boolean,
  bench: Bench,
): Offer[] {
  const whole = (x: ExactLength) =>
    shownText(showExact(x, bench.unit, ALL_PLACES), bench.decimalMark);
  const phase = ({ shift, pitch }: Crossing) => whole(exactLength((upper.phase + shift) % pitch));
  return [
    ...(moved
      ? [{ words: words.takeShift(exactly(best.shift, bench)), take: { upperPhase: phase(best) } }]
      : []),
    ...(otherPitch
      ? [
          {
            words: words.takePitch(whole(otherPitch.pitch)),
            take: { upperPitch: whole(otherPitch.pitch), upperPhase: phase(otherPitch) },
          },
        ]
      : []),
  ];
}

function drawnOf(input: Crossed, { holes }: Crossing) {
  const { lower, upper, angle, hole } = input;
  return {
    lower: toMm(lower.width),
    upper: toMm(upper.width),
    angle,
    hole: toMm(hole),
    made: linesUnder(input).flatMap(({ y, start, pitch, first, last }) =>
      Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => ({
        x: toMm(exactLength(start + (first + i) * pitch)),
        y: toMm(exactLength(y)),
      })),
    ),
    over: holes.map(({ along, across, meets }) => ({ x: toMm(along), y: toMm(across), meets })),
  };
}
