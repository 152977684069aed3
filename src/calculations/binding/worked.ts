import { type BindingWidth, bindingWidth } from '../../sewing/hems/binding.ts';
import { cornerPleats } from '../../sewing/hems/binding-corners.ts';
import { type BindingLength, bindingLength } from '../../sewing/hems/binding-length.ts';
import { answerUnless, type Outcome } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { type BindingAsked, edgeOf } from './fields.ts';

/** How wide a strip is cut, and how long it is where some edge is given. */
export interface Worked {
  width: BindingWidth;
  long: BindingLength | undefined;
  /** Where pleats for corners begin, where that is known. */
  pleats: Run | undefined;
}

/** Both, or everything that is wrong. */
export function bindingOf(asked: BindingAsked): Outcome<Worked> {
  const width = bindingWidth(asked);
  const { straight, outLong, inLong } = asked;
  const some = straight.length + outLong.length + inLong.length > 0;
  const long = some ? bindingLength(edgeOf(asked)) : undefined;
  const problems = [
    ...(width.ok ? [] : width.problems),
    ...(long && !long.ok ? long.problems : []),
  ];
  return answerUnless(problems, () =>
    width.ok
      ? {
          ok: true,
          value: {
            width: width.value,
            long: long?.ok ? long.value : undefined,
            pleats: some ? cornerPleats(edgeOf(asked)) : undefined,
          },
        }
      : width,
  );
}
