import { garmentOrderWords } from '#words/garment/garment-order-words.ts';
import {
  sheetPageWords as pageWords,
  garmentSheetWords as words,
} from '#words/garment/garment-sheet-words.ts';
import { garmentWorkWords } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { Drawing } from '../../../calculation/drawing.ts';
import type { SheetBlock, SheetJob, SheetWords, SheetWork } from '../../../drawing/sheet-job.ts';
import type { State } from '../../../garment/actions/state.ts';
import { readHome } from '../../../garment/record/home.ts';
import { type GarmentSheet, sheetOf } from '../../../garment/sheet/sheet.ts';
import { shownNumber } from '../../../lengths/show-length.ts';
import { materialLines } from '../materials/material-lines.ts';
import { asSentence, workName } from '../said/names.ts';
import { sureQuantity } from '../said/quantity-text.ts';
import { conflictSaid, unsoundSaid, workTroubleSaid } from '../said/told-words.ts';
import { sheetDrawn } from './sheet-drawn.ts';
import { givenNumber, givesPairs, type SheetTelling, stepBlocks } from './sheet-steps.ts';

/** What the sheet is made with. */
export interface SheetWish {
  state: State;
  bench: Bench;
  /** As the phone writes it. */
  day: string;
  /** Measures of someone's body are on it. */
  bodies: boolean;
  /** By calculation, those that are there. */
  drawings: ReadonlyMap<string, Drawing>;
}

/** The sheet of a garment in words, in order: what is not decided first, then measures, steps, numbers, drawings. */
export function sheetSaid(wish: SheetWish): SheetJob {
  const { state, bench, day } = wish;
  const sheet = sheetOf(state.record, state.answer);
  const telling = { answer: state.answer, bench };
  const works = worksSaid(sheet, wish, telling);
  const blocks: SheetBlock[] = [
    ...notices(sheet, wish, telling),
    ...measures(sheet, wish, telling),
    ...materials(wish, telling),
    ...sheet.stages.flatMap(({ stage, steps }): SheetBlock[] => [
      heading(asSentence(garmentOrderWords.stages[stage])),
      ...stepBlocks(steps, telling),
    ]),
    ...(works.length > 0 ? [heading(words.works), { kind: 'works', works } as const] : []),
  ];
  const under = [words.written(day), words.made(sheet.made, sheet.of)].join(' ');
  return {
    title: sheet.name,
    under: sheet.invented ? [under, words.invented] : [under],
    blocks,
  };
}

function heading(text: string): SheetBlock {
  return { kind: 'heading', text };
}

/** Each work with its drawing; a number that stands there isn't said again. Sides that have the same stand once. */
function worksSaid(sheet: GarmentSheet, wish: SheetWish, telling: SheetTelling): SheetWork[] {
  const alike = new Map<string, { id: string; sides: string[]; said: Omit<SheetWork, 'name'> }>();
  for (const { id, side } of sheet.works) {
    const said = workSaid({ id, side }, sheet, wish, telling);
    if (!said) continue;
    const key = JSON.stringify([id, said]);
    const same = alike.get(key);
    if (same) same.sides.push(side);
    else alike.set(key, { id, sides: [side], said });
  }
  return [...alike.values()].map(({ id, sides: [one = '', ...others], said }) => {
    const side = others.length === 0 ? one : garmentWorkWords.oftenAs([one, ...others]);
    return { name: workName(telling, id, side), ...said };
  });
}

function workSaid(
  work: GarmentSheet['works'][number],
  { gives: all }: GarmentSheet,
  { state, bench, drawings }: SheetWish,
  telling: SheetTelling,
): Omit<SheetWork, 'name'> | undefined {
  const { drawn, homes = [] } = sheetDrawn(state, work, drawings, bench) ?? {};
  const gives = all.filter(({ home }) => {
    const { id, side } = readHome(home);
    return id === work.id && side === work.side && !homes.includes(home);
  });
  return drawn || gives.length > 0 ? { drawn, pairs: givesPairs(gives, telling) } : undefined;
}

/** What stands on the pages besides, with numbers as the bench writes them. */
export function sheetWords({ decimalMark }: Bench): SheetWords {
  return {
    ...pageWords,
    toScale: (datum, times) => pageWords.toScale(datum, shownNumber(times, 1, decimalMark)),
  };
}

function notices(sheet: GarmentSheet, { state }: SheetWish, telling: SheetTelling): SheetBlock[] {
  const { conflicts, troubles, unsound, earlier } = sheet;
  const loud = (text: string): SheetBlock => ({ kind: 'note', text, loud: true });
  const plain = (text: string): SheetBlock => ({ kind: 'note', text, loud: false });
  const missing = [
    ...troubles.map((one) => workTroubleSaid(telling, one)),
    ...unsound.map((one) => unsoundSaid(telling, state.record, one)),
  ];
  return [
    ...(sheet.pending ? [loud(words.pending)] : []),
    ...(conflicts.length > 0 ? [loud(words.conflicts(conflicts.length))] : []),
    ...conflicts.map((one) => plain(conflictSaid(telling, one))),
    ...(missing.length > 0 ? [loud(words.unread)] : []),
    ...missing.map(plain),
    ...(earlier.length > 0 ? [plain(words.earlier(earlier.length))] : []),
    ...workNotes(telling).map(plain),
    ...(sheet.of + sheet.gives.length + sheet.quantities.length === 0
      ? [plain(words.nothing)]
      : []),
  ];
}

/** What is noted at whole works. */
function workNotes({ answer }: SheetTelling): string[] {
  return [...answer.sound.notes].flatMap(([home, { text }]) => {
    const { id, key } = readHome(home);
    const isWork = key === '' && answer.works.get(id)?.work.off !== true;
    return text === undefined || !isWork ? [] : [words.noteAt(workName({ answer }, id), text)];
  });
}

function measures(
  { quantities }: GarmentSheet,
  { bodies }: SheetWish,
  telling: SheetTelling,
): SheetBlock[] {
  const shown = quantities.filter(({ quantity }) => bodies || !quantity.body);
  if (shown.length === 0) return [];
  const pairs = shown.map(({ id, quantity, number }) => {
    const name = telling.answer.sound.quantities.get(id)?.name.trim() ?? '';
    const sure = number.is === 'sure' && number.off === 0;
    const said = sure
      ? sureQuantity(quantity, number.value, telling.bench)
      : givenNumber(quantity.kind, number, telling);
    return [quantity.body ? words.body(name) : name, said] as const;
  });
  return [heading(words.measures), { kind: 'pairs', pairs }];
}

/** Everything to have at hand; a box is ticked where all of it is there. */
function materials({ state }: SheetWish, telling: SheetTelling): SheetBlock[] {
  const all = materialLines(state.record, telling);
  return all.length === 0 ? [] : [heading(words.materials), { kind: 'materials', materials: all }];
}
