import type { Garment, Kept } from './garment.ts';

/** What the demo and each calculation kept on it is called, in the language of the app. */
interface DemoNames {
  name: string;
  kept: Readonly<Record<'side' | 'front' | 'back' | 'hooks' | 'armhole', string>>;
}

/** A calculation of the demo, kept under its name. */
function kept(
  names: DemoNames,
  id: keyof DemoNames['kept'],
  stage: Kept['stage'],
  calculation: string,
  typed: string,
): Kept {
  const pairs = typed.split('&').map((pair) => pair.split('='));
  return {
    id,
    name: names.kept[id],
    stage,
    calculation,
    draft: Object.fromEntries([['u', 'cm'], ...pairs]),
    runs: [],
  };
}

/**
 * The demo: a waistcoat for a village brass band. Invented, as is its wearer.
 *
 * It holds what is typed. The fields that are left as a calculation starts, and where its
 * marks come to be, are worked out by the calculations themselves (src/app/garment/demo.ts).
 * @param id given by the caller, so that each demo is a garment of its own
 */
export function demoGarment(names: DemoNames, id: string, changed: number): Garment {
  return {
    version: 2,
    id,
    name: names.name,
    invented: true,
    changed,
    // Nothing of it is anyone's work yet: no backup is asked for.
    edits: 0,
    takenOff: [],
    kept: [
      kept(names, 'side', 'join', 'seam', 'what=finish&given=1.5&finish=plain'),
      kept(names, 'front', 'turn-up', 'hem', 'depth=2&style=unequal&turn=0.7'),
      kept(names, 'back', 'turn-up', 'hem', 'depth=2&shape=rise&chord=40&rise=5'),
      kept(names, 'hooks', 'close', 'closures', 'opening=46.3&count=7&top=1.2&bottom=2.5'),
      kept(names, 'armhole', 'edge', 'centre', 'count=27&pitch=8 mm'),
    ],
  };
}
