import { readHome } from '../../garment/record/home.ts';
import type { Answer } from '../../garment/work-out/work-out.ts';
import { workName } from '../../screens/garment/said/names.ts';
import { stepWords } from '../../screens/garment/said/say.ts';

/** What a note is at, in words: a step, or a whole work. */
export function noteWhere(answer: Answer, home: string): string {
  const step = answer.steps.find((one) => one.home === home);
  const { id, side } = readHome(home);
  return step ? stepWords(answer, step) : workName({ answer }, id, side);
}
