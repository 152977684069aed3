import type { Garment, Kept } from './garment.ts';

/** A calculation of the demo, kept under a name. */
function kept(
  id: string,
  name: string,
  stage: Kept['stage'],
  calculation: string,
  typed: string,
): Kept {
  const pairs = typed.split('&').map((pair) => pair.split('='));
  return {
    id,
    name,
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
export function demoGarment(id: string, changed: number): Garment {
  return {
    version: 2,
    id,
    name: 'Bandsman’s waistcoat (invented)',
    invented: true,
    changed,
    // Nothing of it is anyone's work yet: no backup is asked for.
    edits: 0,
    takenOff: [],
    kept: [
      kept('side', 'Side seams', 'join', 'seam', 'what=finish&given=1.5&finish=plain'),
      kept('front', 'Straight front hems', 'turn-up', 'hem', 'depth=2&style=unequal&turn=0.7'),
      kept('back', 'Curved back hem', 'turn-up', 'hem', 'depth=2&shape=rise&chord=40&rise=5'),
      kept(
        'hooks',
        'Centre front, seven hooks',
        'close',
        'closures',
        'opening=46.3&count=7&top=1.2&bottom=2.5',
      ),
      kept('armhole', 'Armhole strip, middle', 'edge', 'centre', 'count=27&pitch=8 mm'),
    ],
  };
}
