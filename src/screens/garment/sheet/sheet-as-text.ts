import { garmentSheetWords } from '#words/garment/garment-sheet-words.ts';
import type { SheetBlock, SheetJob, SheetPairs } from '../../../drawing/sheet-job.ts';

const words = garmentSheetWords.text;

/** The sheet as plain text: the same, in the same order; of drawings their numbers. */
export function sheetText({ title, under, blocks }: SheetJob): string {
  return `${[title, ...under, ...blocks.flatMap(linesOf)].join('\n')}\n`;
}

function linesOf(block: SheetBlock): string[] {
  switch (block.kind) {
    case 'heading':
      return ['', block.text];
    case 'note':
      return [block.text];
    case 'pairs':
      return pairLines(block.pairs);
    case 'materials':
      return block.materials.flatMap(({ there, name, amount, notes }) => [
        words.line(markOf(there), amount, name),
        ...notes.map(set),
      ]);
    case 'step':
      return [
        words.line(markOf(block.made), block.number, block.what),
        ...block.under.map(set),
        ...(block.strip ? [set(block.strip.datum)] : []),
        ...(block.ticks ?? []).map(({ made, label, text }) =>
          set(words.tick(markOf(made), label, text)),
        ),
      ];
    case 'works':
      return block.works.flatMap(({ name, drawn, pairs }) => [
        name,
        ...(drawn?.dimensions ?? []).map((one) =>
          set(one.name ? words.pair(one.name, one.text) : one.text),
        ),
        ...pairLines(pairs).map(set),
      ]);
  }
}

function pairLines(pairs: SheetPairs): string[] {
  return pairs.map(([name, number]) => words.pair(name, number));
}

/** Under what it belongs to. */
function set(line: string): string {
  return `    ${line}`;
}

function markOf(made: boolean): string {
  return made ? words.made : words.open;
}
