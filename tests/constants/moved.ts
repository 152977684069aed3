import { readFileSync } from 'node:fs';

/** One number of a room's limits, where it is written, and what it is moved to. */
export interface Constant {
  /** Path of the file from the project's folder. */
  readonly file: string;
  readonly name: string;
  /** Where its digits begin and end in the file. */
  readonly from: number;
  readonly to: number;
  readonly value: number;
}

const EXPORTED = /^export const ([A-Z][A-Z0-9_]*)[^=]*= ([\s\S]*?);$/gm;
const NUMBER = /(?<![\w.])\d[\d_]*(?:\.\d+)?(?:e-?\d+)?(?![\w.])/g;

/** Every number that a file of limits gives a name to; of several in one constant each by itself. */
export function constantsIn(file: string): Constant[] {
  const text = readFileSync(file, 'utf8');
  return [...text.matchAll(EXPORTED)].flatMap((exported) => {
    const [all, name = '', given = ''] = exported;
    const start = exported.index + all.length - given.length - 1;
    const numbers = [...given.matchAll(NUMBER)];
    return numbers.map(([digits, ..._], i): Constant => {
      const from = start + (numbers[i]?.index ?? 0);
      const value = Number(digits.replaceAll('_', ''));
      const which = numbers.length > 1 ? ` ${i + 1}` : '';
      return { file, name: `${name}${which}`, from, to: from + digits.length, value };
    });
  });
}

/** A third more (sign 1) or less (−1); a whole number stays whole and moves by 1 at least. */
export function movedValue(value: number, sign: 1 | -1): number {
  const moved = value * (1 + sign / 3);
  if (!Number.isInteger(value)) return moved;
  return sign > 0 ? Math.max(value + 1, Math.round(moved)) : Math.min(value - 1, Math.round(moved));
}

/** The file with one of its numbers moved. */
export function withMoved({ file, from, to, value }: Constant, sign: 1 | -1): string {
  const text = readFileSync(file, 'utf8');
  return `${text.slice(0, from)}${movedValue(value, sign)}${text.slice(to)}`;
}
