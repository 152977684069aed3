import { useMemo } from 'preact/hooks';

import { markOut } from '../sewing/marks.ts';
import { followWords } from '../words/follow-words.ts';
import { type Bench, tapeStep } from './bench.ts';
import type { Calculation, Draft, NamedRun } from './calculation.ts';
import { FollowRun, type FollowServices } from './follow-run.tsx';
import { type Made, madeKey, readMade, writeMade } from './made.ts';
import { onTape } from './tape-text.ts';

export interface FollowProps {
  calculation: Calculation;
  draft: Draft;
  bench: Bench;
  services: FollowServices;
  onDraft: (draft: Draft) => void;
  onLeave: () => void;
  /** Reads a tape for what is named, such as `made:3`. */
  onTape: (into: string) => void;
}

/** The marks of one run of a calculation; where it has come to is in the draft. */
export function Follow(props: FollowProps) {
  const { calculation, draft, bench, onLeave } = props;
  const work = useMemo(() => calculation.work(draft, bench), [calculation, draft, bench]);
  const named = work.ok ? work.answer.runs[Number(draft.run ?? 0)] : undefined;
  if (!named || named.run.marks.length === 0) {
    return (
      <main class="follow">
        <p class="warning">{followWords.nothing}</p>
        <button type="button" class="next" onClick={onLeave}>
          {followWords.leave}
        </button>
      </main>
    );
  }
  return <Followed {...props} named={named} />;
}

function Followed(props: FollowProps & { named: NamedRun }) {
  const { named, draft, bench, services, onDraft, onLeave } = props;
  const { marks } = named.run;
  const count = marks.length;
  const at = placeOf(draft.at, count);
  const key = madeKey(Number(draft.run ?? 0));
  const made = readMade(draft[key] ?? '');
  const go = (to: number) => onDraft({ ...draft, at: String(Math.max(0, Math.min(to, count))) });
  return (
    <FollowRun
      named={named}
      at={at}
      made={made.get(marks[Math.min(at, count - 1)]?.label ?? '')}
      bench={bench}
      services={services}
      turn={String(at)}
      actions={<Respace {...props} made={made} at={at} />}
      nextWords={at >= count ? followWords.restart : followWords.next}
      onNext={() => go(at >= count ? 0 : at + 1)}
      onBack={() => go(at - 1)}
      onPick={go}
      onMeasured={(label, typed) => onDraft({ ...draft, [key]: writeMade(made, label, typed) })}
      onLeave={onLeave}
      onTape={(label) => props.onTape(`made:${label}`)}
    />
  );
}

/** Offered once something was made elsewhere than planned: the rest spaced around it. */
function Respace(props: FollowProps & { named: NamedRun; made: Made; at: number }) {
  const { calculation, named, made, at, draft, bench, onDraft } = props;
  const around = calculation.around;
  if (made.size === 0 || !around) return null;
  const { marks } = markOut(named.run, tapeStep(bench));
  const done = marks
    .filter((mark, i) => i < at || made.has(mark.label))
    .map((mark) => made.get(mark.label) ?? onTape(mark.at, bench));
  return (
    <button type="button" class="main" onClick={() => onDraft(around(draft, done, marks.length))}>
      {followWords.respace}
    </button>
  );
}

/** A place kept in an address: a whole number from 0 to the number of marks, else the first. */
function placeOf(typed: string | undefined, count: number): number {
  const at = Number(typed ?? 0);
  return Number.isInteger(at) && at >= 0 ? Math.min(at, count) : 0;
}
