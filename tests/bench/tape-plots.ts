import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bars, HEIGHT, logAxis, picture, shareAxis, text, WIDTH } from './svg-plot.ts';
import { isRead, wrongIn } from './tape-report.ts';
import { type SceneOutcome, WRONG_MM } from './tape-scenes.ts';

/** What errors and doubts are drawn between, mm; what lies beyond is drawn at the end. */
const LEAST_MM = 0.0001;
const MOST_MM = 1000;

/** What can come of a scene, from good to bad; colours: Okabe and Ito (from memory). */
const OUTCOMES = [
  { name: 'read', colour: '#009e73' },
  { name: 'read in part', colour: '#56b4e9' },
  { name: 'ask', colour: '#f0e442' },
  { name: 'cannot', colour: '#999999' },
  { name: 'wrong', colour: '#d55e00' },
];
const [GOOD, WRONG] = ['#0072b2', '#d55e00'];

/** Writes three drawings of a run into `folder`, and tells their files. */
export function writePlots(outcomes: readonly SceneOutcome[], folder: string, seed: number) {
  const drawings = {
    errors: errorsPlot(outcomes),
    stated: statedPlot(outcomes),
    outcomes: outcomesPlot(outcomes),
  };
  return Object.entries(drawings).map(([name, svg]) => {
    const file = join(folder, `${name}-${seed}.svg`);
    writeFileSync(file, svg);
    return file;
  });
}

function errorsOf(outcomes: readonly SceneOutcome[]) {
  return outcomes.flatMap(({ points }) =>
    points.map(({ error, stated }) => ({ error: Math.abs(error), stated })),
  );
}

/** How many of the places are off by at most so much. */
function errorsPlot(outcomes: readonly SceneOutcome[]): string {
  const errors = errorsOf(outcomes)
    .map(({ error }) => error)
    .sort((one, other) => one - other);
  const x = logAxis('x', LEAST_MM, MOST_MM, 'error, mm');
  const y = shareAxis('places that are off by at most so much');
  const steps = errors.map((error, i) => {
    const [along, before, up] = [
      x.at(error),
      y.at(i / errors.length),
      y.at((i + 1) / errors.length),
    ];
    return `L${along},${before}V${up}`;
  });
  const path = `M${x.at(LEAST_MM)},${y.at(0)}${steps.join('')}H${x.at(MOST_MM)}`;
  return picture(`${errors.length} places of ${outcomes.length} scenes`, HEIGHT, [
    x.drawn,
    y.drawn,
    `<path d="M${x.at(WRONG_MM)},${y.at(0)}V${y.at(1)}" stroke="${WRONG}" stroke-dasharray="6 4"/>`,
    `<path d="${path}" fill="none" stroke="${GOOD}" stroke-width="2"/>`,
  ]);
}

/** What was stated of each place against its error: below the slanting line it holds. */
function statedPlot(outcomes: readonly SceneOutcome[]): string {
  const places = errorsOf(outcomes);
  const x = logAxis('x', LEAST_MM, MOST_MM, 'stated: off by at most, mm');
  const y = logAxis('y', LEAST_MM, MOST_MM, 'error, mm');
  const held = places.filter(({ error, stated }) => error <= stated).length;
  const dots = places.map(({ error, stated }) => {
    const colour = error > stated ? WRONG : GOOD;
    return `<circle cx="${x.at(stated)}" cy="${y.at(error)}" r="2" fill="${colour}" fill-opacity="0.4"/>`;
  });
  const same = `M${x.at(LEAST_MM)},${y.at(LEAST_MM)}L${x.at(MOST_MM)},${y.at(MOST_MM)}`;
  const share = ((100 * held) / Math.max(1, places.length)).toFixed(1);
  return picture(`${places.length} places: ${share} % within what was stated`, HEIGHT, [
    x.drawn,
    y.drawn,
    `<path d="${same}" stroke="#000"/>`,
    ...dots,
  ]);
}

function outcomesPlot(outcomes: readonly SceneOutcome[]): string {
  const rows = [...new Set(outcomes.map(({ kind }) => kind))].map((kind) => {
    const own = outcomes.filter((one) => one.kind === kind);
    const counts = OUTCOMES.map((_, i) => own.filter((one) => classOf(one) === i).length);
    return { name: `${kind} (${own[0]?.expect})`, counts };
  });
  const legend = OUTCOMES.map(({ name, colour }, i) => {
    const left = 20 + (i * (WIDTH - 40)) / OUTCOMES.length;
    return `<rect x="${left}" y="38" width="12" height="12" fill="${colour}"/>${text(left + 17, 48, name)}`;
  });
  const colours = OUTCOMES.map(({ colour }) => colour);
  const drawn = bars(rows, colours, 62);
  const title = `${outcomes.length} scenes by kind; wrong: a place off by more than ${WRONG_MM} mm`;
  return picture(title, drawn.height, [...legend, ...drawn.parts]);
}

/** Which of `OUTCOMES`; wherever a place was told wrong, that is what came of the scene. */
function classOf(one: SceneOutcome): number {
  if (wrongIn(one) > 0) return 4;
  if (one.outcome === 'read') return isRead(one) ? 0 : 1;
  return one.outcome === 'ask' ? 2 : 3;
}
