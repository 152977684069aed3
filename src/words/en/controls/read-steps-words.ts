import type { StepFault } from '../../../sewing/lacing/lacing-steps.ts';

/** Says in one sentence what is wrong with steps of one's own and what would put it right. */
export function readStepsWords(label: string, fault: StepFault): string {
  return `${label}: ${reason(fault)}.`;
}

function reason(fault: StepFault): string {
  switch (fault.kind) {
    case 'empty':
      return 'write steps like 0 1 front; 1 0 front; 1 0 back; 1 1 back; 1 1 front: pitches along, margins from the edge, face';
    case 'one-step':
      return 'one step is no repeat; end with the first step again, further on';
    case 'too-many-steps':
      return `${fault.steps} steps are more than are kept in mind; give at most ${fault.most}`;
    case 'unreadable':
      return `step ${fault.step}, “${fault.text}”, was not understood; write it like 1 0 front, with turn after it where it goes round lace`;
    case 'too-far':
      return `step ${fault.step} is more than ${fault.most} pitches or margins away; check its numbers`;
    case 'nowhere':
      return `step ${fault.step} goes nowhere: it is at the same place and on the same face as the one before; leave it out`;
    case 'both':
      return `step ${fault.step} changes place and face at once; give a step of its own to where it passes from face to face`;
    case 'not-in-hole':
      return 'step 1 is not in a hole; begin with a whole number along and 1 across';
    case 'not-again':
      return `step ${fault.step}, the last, is not step 1 again; end with the same across and face`;
    case 'no-advance':
      return `step ${fault.step}, the last, comes no whole number of holes on from step 1; end at a hole further along`;
    case 'no-pass':
      return 'the lace never goes from face to face; add a step at the same place on the other face';
    default:
      return unworded(fault);
  }
}

/** Fails to compile while a kind of fault has no words. */
function unworded(fault: never): never {
  throw new Error(`no words for ${JSON.stringify(fault)}`);
}
