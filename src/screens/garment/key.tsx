import { garmentHomeWords as words } from '#words/garment-home-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { usePress } from '../../controls/use-press.ts';
import type { Next } from '../../garment/next/next.ts';
import type { Answer } from '../../garment/work-out/work-out.ts';
import { type Said, StepBody } from './key-body.tsx';
import { numberOf, stepWords, workOf } from './say.ts';

interface Props {
  answer: Answer;
  next: Next;
  bench: Bench;
  /** What is missing, in words. */
  missing: string;
  /** It is cut, punched or trimmed, and what it hangs on has not been looked at. */
  checkFirst: boolean;
  /** The rest of the key: more about the step. */
  onMore: () => void;
  /** Its large part. */
  onPress: () => void;
}

/** The key: the next step, its number as large as there is room, and Made under the thumb. */
export function Key(props: Props) {
  const { answer, next, bench } = props;
  const face = faceOf(props);
  const said = next.kind === 'step' ? stepSaid(answer, next, bench) : undefined;
  const press = usePress(`${face} ${said?.above ?? ''} ${said?.number ?? ''}`, props.onPress);
  const body = said ? <StepBody {...said} /> : <p class="why">{whyOf(props)}</p>;
  return (
    <section class="next-key" data-hand={bench.hand} data-kind={next.kind} aria-label={words.key}>
      {next.kind === 'step' ? (
        <button type="button" class="says" aria-description={words.more} onClick={props.onMore}>
          {body}
        </button>
      ) : (
        <div class="says">{body}</div>
      )}
      <button type="button" class="made" {...press}>
        {face}
      </button>
      <p class="unseen" aria-live="polite" aria-atomic="true">
        {said ? `${said.above} ${said.number}` : whyOf(props)}
      </p>
    </section>
  );
}

/** What a key says of a step. */
export function stepSaid(
  answer: Answer,
  next: Extract<Next, { kind: 'step' }>,
  bench: Bench,
): Said {
  const { step, value, mark, after } = next;
  const kind = answer.nodes.get(step.home)?.kind;
  const rank = mark && words.mark(mark.rank + 1, step.of ?? 0);
  const from =
    mark?.before === undefined ? undefined : words.from(numberOf(kind, value - mark.before, bench));
  const further = after === undefined ? undefined : words.after(numberOf(kind, after, bench));
  return {
    above: [stepWords(answer, step), rank].filter(Boolean).join(' · '),
    number: numberOf(kind, value, bench),
    below: [from, further].filter(Boolean).join(' · '),
  };
}

function faceOf({ next, checkFirst }: Props): string {
  switch (next.kind) {
    case 'step':
      return checkFirst ? words.check : words.make;
    case 'decide':
      return words.decideKey;
    case 'missing':
      return words.missingKey;
    case 'all made':
      return words.allMadeKey;
    case 'nothing yet':
      return words.nothingKey;
  }
}

function whyOf({ answer, next, missing }: Props): string {
  switch (next.kind) {
    case 'decide':
      return words.decide(workOf(answer, next.home));
    case 'missing':
      return missing;
    case 'all made':
      return words.allMade;
    case 'nothing yet':
      return words.nothing;
    case 'step':
      return '';
  }
}
