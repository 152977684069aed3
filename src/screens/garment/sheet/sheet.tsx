import { useMemo, useState } from 'preact/hooks';
import { garmentSheetWords as words } from '#words/garment/garment-sheet-words.ts';
import { paperWords } from '#words/paper/paper-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { Drawing } from '../../../calculation/drawing.ts';
import { Choice } from '../../../controls/paper-choice.tsx';
import type { PaperServices } from '../../../controls/paper-services.ts';
import type { PaperOutcome } from '../../../drawing/paper-job.ts';
import { lettersLacking } from '../../../drawing/paper-letters.ts';
import type { SheetSetting } from '../../../drawing/sheet-job.ts';
import { sheetPages } from '../../../drawing/sheet-pages.ts';
import type { State } from '../../../garment/actions/state.ts';
import { MARGIN, SeenSheet, usualSize } from './seen-sheet.tsx';
import { sheetSaid, sheetWords } from './sheet-said.ts';
import { SheetText } from './sheet-text.tsx';

interface Props {
  state: State;
  bench: Bench;
  /** Today, as the phone writes it. */
  day: string;
  /** Of the works' calculations; `missing` where some can't be had just now. */
  drawings: ReadonlyMap<string, Drawing>;
  missing: boolean;
  services: PaperServices;
  onLeave: () => void;
}

/** A garment of common size has no more pages; that another has more is said. */
const MOST = 2;

/** The whole garment on paper, seen before it is printed; and as text. */
export function GarmentSheet(props: Props) {
  const { state, bench, day, drawings, services } = props;
  const [size, setSize] = useState(usualSize(bench));
  const [long, setLong] = useState<SheetSetting['long']>('scale');
  const [bodies, setBodies] = useState<'shown' | 'out'>('shown');
  const job = useMemo(
    () => sheetSaid({ state, bench, day, bodies: bodies === 'shown', drawings }),
    [state, bench, day, bodies, drawings],
  );
  const laid = useMemo(
    () => sheetPages(job, { size, margin: MARGIN, long }, sheetWords(bench)),
    [job, size, long, bench],
  );
  const hasBodies = [...state.answer.sound.quantities.values()].some(({ body }) => body);
  return (
    <SeenSheet
      {...{ bench, laid, services, size }}
      heading={words.of(job.title)}
      said={said(laid, job.title, props.missing)}
      named={words.page}
      title={job.title}
      about={{ choose: words.title, leave: words.title }}
      onSize={setSize}
      onLeave={props.onLeave}
    >
      <Choice
        legend={words.long}
        name="long"
        options={words.longs}
        chosen={long}
        onChoose={(value) => setLong(value as SheetSetting['long'])}
      />
      {hasBodies && (
        <Choice
          legend={words.bodies}
          name="bodies"
          options={words.bodiesShown}
          chosen={bodies}
          onChoose={(value) => setBodies(value as typeof bodies)}
        />
      )}
      <SheetText job={job} services={services} />
    </SeenSheet>
  );
}

/** How many pages there are, or why there are none; and what the letters of the pages can't say. */
function said(laid: PaperOutcome, title: string, missing: boolean): string {
  if (!laid.ok) {
    const { problem } = laid;
    return problem.kind === 'too-many' ? paperWords.tooMany(problem.pages, problem.most) : '';
  }
  const lacking = lettersLacking(title);
  return [
    laid.pages.length > MOST ? words.many(laid.pages.length) : `${words.pages(laid.pages.length)}.`,
    words.look,
    ...(missing ? [words.missing] : []),
    ...(lacking === '' ? [] : [paperWords.lacking(lacking)]),
  ].join(' ');
}
