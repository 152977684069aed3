import { crossingWords as words } from '#words/calculations/crossing-words.ts';
import { holeWords } from '#words/common/hole-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, NamedRun, Offer } from '../../calculation/calculation.ts';
import { asTyped } from '../../calculation/draft-text.ts';
import type { Typed } from '../../calculation/schema.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { crossingFigure } from '../../drawing/crossing-figure.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { showExact } from '../../lengths/show-length.ts';
import type { Crossed } from '../../sewing/crossing/crossing-holes.ts';
import { chosenOf, shorterMove } from '../../sewing/crossing/crossing-move.ts';
import { type NewHoles, newHoles } from '../../sewing/crossing/crossing-run.ts';
import type { Crossing, CrossingPlan } from '../../sewing/crossing/strip-crossing.ts';
import { drawnOf } from './drawn.ts';
import type { crossingFields } from './fields.ts';

type Show = (x: ExactLength) => string;
type Own = Typed<(typeof crossingFields)['specs']>;

/** Two crossing strips as an answer. */
export function crossingAnswer(input: Crossed, plan: CrossingPlan, bench: Bench): Answer {
  const { asLaid, best } = plan;
  const show: Show = (x) => byTape(x, bench);
  const { chosen, moved } = chosenOf(plan);
  const fresh = newHoles(input.lower, chosen);
  const near = chosen.holes.filter(({ meets, nearEdge }) => meets !== 'shared' && nearEdge).length;
  return {
    headline: headline(chosen, moved, near, bench),
    sentence: sentence(chosen, moved, near, show),
    lines: [
      { label: words.seen, value: words.seenAs },
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
    figures: [
      { name: words.figure(moved), draw: () => crossingFigure(drawnOf(input, chosen, moved)) },
    ],
    workings: [{ formula: words.rule, source: words.derived }],
  };
}

/** The worst that is true: clashes, then holes that may tear out, and only then the shift. */
function headline(
  { clashes, shift, pitch }: Crossing,
  moved: boolean,
  near: number,
  { unit }: Bench,
): Answer['headline'] {
  if (clashes > 0) return { number: String(clashes), after: words.clash(clashes) };
  if (near > 0) return { number: String(near), after: words.tear(near) };
  const { by, back } = shorterMove({ shift, pitch });
  const number = showExact(moved ? by : exactLength(0), unit, unit === 'mm' ? 2 : 3);
  return { number, after: moved ? words.move(back) : words.lies };
}

/** A shift is said both ways: a pitch less of it the other way is the same place. */
function sentence(
  { clashes, room, shift, pitch }: Crossing,
  moved: boolean,
  near: number,
  show: Show,
): string {
  const { by, back, other } = shorterMove({ shift, pitch });
  const stays = clashes > 0 || near > 0 ? [words.leave] : [];
  return [
    ...(moved ? [words.moveBy(show(by), back, show(other))] : stays),
    clashes > 0 ? words.least : words.clear(room === undefined ? undefined : show(room), moved),
  ].join(' ');
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
  const whole = (x: ExactLength) => asTyped(x, bench);
  const phase = ({ shift, pitch }: Crossing) => whole(exactLength((upper.phase + shift) % pitch));
  return [
    ...(moved
      ? [
          {
            words: words.takeShift(byTape(shorterMove(best).by, bench)),
            take: { upperPhase: phase(best) } satisfies Own,
          },
        ]
      : []),
    ...(otherPitch
      ? [
          {
            words: words.takePitch(whole(otherPitch.pitch)),
            take: {
              upperPitch: whole(otherPitch.pitch),
              upperPhase: phase(otherPitch),
            } satisfies Own,
          },
        ]
      : []),
  ];
}
