import { placeInGarment as words } from '#words/garment/garment-trouble-words.ts';
import { fieldName, type Named, numberName } from './names.ts';

/** How many of a long way round are named at its beginning, and at its end. */
const FIRST = 4;
const LAST = 2;

/** A way round in words, each with the field by which it takes the next: "Hem · Allowance, by Depth → … → Hem · Allowance". */
export function pathWords(named: Named, path: readonly string[]): string {
  const all = path.map((key, i) => stepWords(named, key, path[(i + 1) % path.length] ?? key));
  // What is made and what is asked of one number are two keys with one name.
  const names = all.filter((name, i) => name !== all[i - 1]);
  const back = path[0] === undefined ? [] : [numberName(named, path[0])];
  if (names.length <= FIRST + LAST + 1) return words.path([...names, ...back]);
  const left = names.length - FIRST - LAST;
  return words.path([...names.slice(0, FIRST), words.more(left), ...names.slice(-LAST), ...back]);
}

function stepWords(named: Named, key: string, next: string): string {
  const name = numberName(named, key);
  const node = named.answer.nodes.get(key);
  if (node?.form !== 'plan' || !node.output) return name;
  const field = node.fields.find(({ sources }) => sources.some(({ keys }) => keys.includes(next)));
  if (!field) return name;
  return words.by(name, fieldName({ ...named, here: node.id }, node.id, '', field.key));
}
