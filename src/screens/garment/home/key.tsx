import { exampleWords } from '#words/garment/example-words.ts';
import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { usePress } from '../../../controls/use-press.ts';
import type { Next } from '../../../garment/next/next.ts';
import { readHome } from '../../../garment/record/home.ts';
import { piecesOf } from '../../../garment/work-out/pieces-of.ts';
import type { GarmentStep } from '../../../garment/work-out/told.ts';
import { isUntouched } from '../../../garment/work-out/untouched.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import { workName } from '../said/names.ts';
import { numberAt, numberOf, stepWords, workOf } from '../said/say.ts';
import { type Said, StepBody } from './key-body.tsx';

interface Props {
  answer: Answer;
  next: Next;
  bench: Bench;
  /** The same step on other sides, made with the same press. */
  also: readonly GarmentStep[];
  /** What is missing, in words. */
  missing: string;
  /** It is cut, punched or trimmed, and what it hangs on has not been looked at. */
  checkFirst: boolean;
  /** The rest of the key: more about the step. */
  onMore: () => void;
  /** Its large part. */
  onPress: () => void;
  /** Reads what is missing off a tape, where that can be. */
  onRead: (() => void) | undefined;
}

/** The key: the next step, its number as large as there is room, and Made under the thumb. */
export function Key(props: Props) {
  const { answer, next, bench, also, onRead } = props;
  const said = next.kind === 'step' ? stepSaid(answer, next, bench, also) : undefined;
  const body = said ? <StepBody {...said} /> : <p class="why">{whyOf(props)}</p>;
  const stands = `${said?.above ?? ''} ${said?.number ?? ''}`;
  return (
    <section class="next-key" data-hand={bench.hand} data-kind={next.kind} aria-label={words.key}>
      {next.kind === 'step' ? (
        <button type="button" class="says" aria-description={words.more} onClick={props.onMore}>
          {body}
        </button>
      ) : (
        <div class="says">{body}</div>
      )}
      <div class="parts">
        <Part face={faceOf(props)} stands={stands} onPress={props.onPress} />
        {onRead && <Part face={words.readKey} stands={stands} onPress={onRead} />}
      </div>
      <p class="unseen" aria-live="polite" aria-atomic="true">
        {said ? stands : whyOf(props)}
      </p>
    </section>
  );
}

/** A part of the key that does something. @param stands what the rest of the key says */
function Part({ face, stands, onPress }: { face: string; stands: string; onPress: () => void }) {
  const press = usePress(`${face} ${stands}`, onPress);
  const word = Math.max(...face.split(' ').map(({ length }) => length));
  return (
    <button type="button" class="made" style={{ '--word': word }} {...press}>
      {face}
    </button>
  );
}

/** What a key says of a step. */
export function stepSaid(
  answer: Answer,
  next: Extract<Next, { kind: 'step' }>,
  bench: Bench,
  also: readonly GarmentStep[] = [],
): Said {
  const { step, value, mark, after } = next;
  const kind = answer.nodes.get(step.home)?.kind;
  const rank = mark && words.mark(mark.rank + 1, step.of ?? 0);
  const from =
    mark?.before === undefined ? undefined : words.from(numberOf(kind, value - mark.before, bench));
  const { id } = readHome(step.home);
  const sides = [step, ...also].map(({ home }) => readHome(home).side);
  const many = step.step.stage === 'cut' && piecesOf(answer, id, sides);
  const pieces = many ? many.each.reduce((sum, one) => sum + one, 0) : 1;
  const further = after && words.after(numberAt(answer, after.home, after.value, bench));
  return {
    above: [
      stepWords(answer, step, also),
      rank,
      pieces > sides.length && words.pieces(pieces),
      step.passed && words.passedOver,
    ]
      .filter(Boolean)
      .join(' · '),
    work: workName({ answer }, id),
    number: numberAt(answer, step.home, value, bench),
    below: isUntouched(answer, id)
      ? exampleWords.short
      : [from, further].filter(Boolean).join(' · '),
  };
}

function faceOf({ next, checkFirst, onRead }: Props): string {
  switch (next.kind) {
    case 'step':
      return checkFirst ? words.check : words.make;
    case 'decide':
      return words.decideKey;
    case 'missing':
      return onRead ? words.typeKey : words.missingKey;
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
