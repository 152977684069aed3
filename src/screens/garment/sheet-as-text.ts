import { garmentSheetWords } from '#words/garment/garment-sheet-words.ts';
import type { SheetBlock, SheetJob } from '../../drawing/sheet-job.ts';

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
      return block.pairs.map(([name, number]) => words.pair(name, number));
    case 'step':
      return [
        words.line(markOf(block.made), block.number, block.what),
        ...block.under.map((one) => `    ${one}`),
        ...(block.strip ? [`    ${block.strip.datum}`] : []),
        ...(block.ticks ?? []).map(
          ({ made, label, text }) => `    ${words.tick(markOf(made), label, text)}`,
        ),
      ];
    case 'drawings':
      return block.drawings.flatMap(({ name, drawn }) => [
        name,
        ...drawn.dimensions.map(
          (one) => `    ${one.name ? words.pair(one.name, one.text) : one.text}`,
        ),
      ]);
  }
}

function markOf(made: boolean): string {
  return made ? words.made : words.open;
}
