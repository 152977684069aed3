import { figureWords } from '#words/common/figure-words.ts';
import { type ExactLength, exactLength } from '../lengths/length.ts';
import { readLength } from '../lengths/read-length.ts';
import { inPlaceOrder, runAsMade } from '../sewing/made-run.ts';
import type { Run } from '../sewing/run.ts';
import type { Bench } from './bench.ts';
import type { Answer, NamedRun } from './calculation.ts';
import { type Made, recordOf } from './made.ts';
import type { Page } from './page.ts';

/** Where marks were measured, by label; what can't be read is nowhere. */
function placesMade(made: Made, bench: Bench): Map<string, ExactLength> {
  const places = new Map<string, ExactLength>();
  for (const [label, typed] of made) {
    const reading = readLength(typed, bench.unit);
    if (reading.ok) places.set(label, exactLength(reading.value));
  }
  return places;
}

/** One run of a page with its marks where they were made, in the order of the plan. */
export function followedRun(named: NamedRun, page: Page, i: number, bench: Bench): NamedRun {
  const { made } = recordOf(page, i, named.run);
  const run = made.size > 0 ? runAsMade(named.run, placesMade(made, bench)) : named.run;
  return run === named.run ? named : { ...named, run };
}

/** A run of a page as it is drawn, listed, printed: as made, in the order marks lie in. */
export function drawnRun(run: Run, page: Page, i: number, bench: Bench): Run {
  const { made } = recordOf(page, i, run);
  return made.size > 0 ? inPlaceOrder(runAsMade(run, placesMade(made, bench))) : run;
}

/** An answer as it is drawn, listed and printed: with its marks where they were made. */
export function drawnAnswer(answer: Answer, page: Page, bench: Bench): Answer {
  const runs = answer.runs.map((named, i) => {
    const run = drawnRun(named.run, page, i, bench);
    return run === named.run ? named : { ...named, run };
  });
  if (runs.every((named, i) => named === answer.runs[i])) return answer;
  const figures = answer.figures?.map(({ name, draw, made }) =>
    made ? { name, draw: () => made(runs) } : { name: figureWords.planned(name), draw },
  );
  const lines = answer.linesMade?.(runs) ?? answer.lines;
  return { ...answer, lines, runs, ...(figures && { figures }) };
}
