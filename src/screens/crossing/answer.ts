import type { Bench } from '../../controls/bench.ts';
import type { Answer, Line, NamedRun, Offer } from '../../controls/calculation.ts';
import { exactly } from '../../controls/tape-text.ts';
import { crossingFigure } from '../../drawing/crossing-figure.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { showExact, shownText } from '../../lengths/show-length.ts';
import { type Crossed, linesUnder } from '../../sewing/crossing-holes.ts';
import { type NewHoles, newHoles } from '../../sewing/crossing-run.ts';
import type { Crossing, CrossingPlan } from '../../sewing/strip-crossing.ts';
import { crossingWords as words } from '../../words/crossing-words.ts';
import { holeWords } from '../../words/hole-words.ts';

type Show = (x: ExactLength) => string;

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
  const fresh = newHoles(input.lower, chosen);
  const near = chosen.holes.filter(({ meets, nearEdge }) => meets !== 'shared' && nearEdge).length;
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
    listsLast: true,
    runs: runsOf(input, fresh),
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

function newHoleLines(fresh: NewHoles | undefined, show: Show): Line[] {
  const count = { label: words.newHoles, value: String(fresh?.run.marks.length ?? 0) };
  if (!fresh) return [count];
  const { from, run } = fresh;
  const along = show(exactLength(Math.abs(from)));
  const [only, second] = run.marks;
  return [
    count,
    { label: words.measuredFrom, value: words.madeHole(along, from >= 0) },
    { label: words.across, value: words.acrossFrom },
    // A single mark has no list of its own.
    ...(only?.across !== undefined && !second
      ? [{ label: words.newHole, value: words.place(show(only.at), show(only.across)) }]
      : []),
  ];
}

function runsOf({ lower, hole }: Crossed, fresh: NewHoles | undefined): NamedRun[] {
  if (!fresh) return [];
  const strip = { across: exactLength(0), width: lower.width, hole };
  return [{ name: words.newHoles, item: words.newHole, run: fresh.run, strip }];
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
