import { hemWords as words } from '#words/calculations/hem-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { foldWorking } from '../../calculation/fold-working.ts';
import { percentText } from '../../calculation/tape-said.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { HemInput } from '../../sewing/hems/hem-input.ts';
import { HEM_STITCH } from '../../sewing/sources/hems.ts';
import type { Parts } from './parts.ts';

/** How the numbers of a hem were got. */
export function workings(input: HemInput, { hem, curve }: Parts, bench: Bench): Working[] {
  const { depth, turn, thickness } = input;
  const show = (x: Parameters<typeof exactly>[0]) => exactly(x, bench);
  const { first, last, inside } = hem.folds;
  const terms = [
    show(depth),
    ...(turn > 0 ? [show(turn)] : []),
    ...(thickness > 0 ? [...(turn > 0 ? [show(first)] : []), show(last)] : []),
  ];
  const alone = turn > 0 || inside === 0;
  const folds =
    thickness > 0 ? [...(alone ? [0 as const] : []), ...(inside ? [1 as const] : [])] : [];
  return [
    { formula: turned.sum(terms, show(hem.allowance)), source: words.source(HEM_STITCH) },
    ...folds.map((layers) => foldWorking(thickness, layers, bench)),
    ...(curve?.radius
      ? [
          {
            formula: words.curveFormula(
              show(depth),
              show(curve.radius),
              percentText(curve.fullness, bench),
            ),
            source: words.curveSource,
          },
        ]
      : []),
  ];
}
