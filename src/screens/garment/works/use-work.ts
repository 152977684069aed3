import { useMemo, useRef, useState } from 'preact/hooks';
import type { Bench } from '../../../calculation/bench.ts';
import type { Calculation } from '../../../calculation/calculation.ts';
import type { Drawing } from '../../../calculation/drawing.ts';
import { useAfterPaint } from '../../../controls/after-paint.ts';
import { useAlike } from '../../../controls/use-alike.ts';
import { useSame } from '../../../controls/use-same.ts';
import type { Action } from '../../../garment/actions/act.ts';
import type { Refused, State } from '../../../garment/actions/state.ts';
import { pendingOf } from '../../../garment/actions/typing.ts';
import { readHome } from '../../../garment/record/home.ts';
import { openWork } from './open-work.ts';
import { useRested } from './use-rested.ts';
import { type Do, useTyping } from './use-typing.ts';
import { drawnOf, type Touch } from './work-labels.ts';
import { answerOf, givesOf, headlineOf } from './work-numbers.ts';
import { typedNumber } from './work-said.ts';

/** What lies over the keys of a work. */
export type Panel =
  | { of: 'links' | 'off' | 'as' }
  | { of: 'name'; home: string }
  | { of: 'made'; home: string; fact: string };

interface Given {
  state: State;
  work: string;
  bench: Bench;
  /** The calculation of the work, and how it is drawn, as far as they are there. */
  page: Calculation | undefined;
  drawing: Drawing | 'awaited' | undefined;
  onAct: (action: Action) => void;
  /** Why the last thing wasn't done. */
  refused: Refused | undefined;
  /** The last change before the work was opened, where that was before it is shown, as when a tape was read for it. */
  since?: number | undefined;
}

export type WorkInHand = ReturnType<typeof useWork>['hand'];
export type WorkDrawn = ReturnType<typeof useWork>['drawn'];

/**
 * A work that is open: the side in hand, what is typed, what it gives, what lies over its keys; and its
 * drawing, which follows the rest: what is in hand is the very same then, so that only the drawing is drawn anew.
 */
export function useWork({
  state,
  work: id,
  bench,
  page,
  drawing: coming,
  refused,
  since,
  onAct,
}: Given) {
  const awaited = coming === 'awaited';
  const drawing = awaited ? undefined : coming;
  const sides = useMemo(
    () => state.answer.works.get(id)?.sides.map((one) => one.side) ?? [''],
    [state.answer, id],
  );
  const [chosen, setSide] = useState(() => sideToSee(state, id) ?? sides[0] ?? '');
  const side = sides.includes(chosen) ? chosen : (sides[0] ?? '');
  const [panel, setPanel] = useState<Panel>();
  const [more, setMore] = useState(false);
  const open = useMemo(() => openWork(state, id, side, bench), [state, id, side, bench]);
  const onDo: Do = useSame((deed) => onAct({ ...deed, now: Date.now() } as Action));
  const typing = useTyping({ state, open, bench, onDo });
  const gives = useMemo(() => (open ? givesOf(open, answerOf(state, open)) : []), [state, open]);
  const worked = useMemo(() => ({ open, gives }), [open, gives]);
  // A key is answered first: its drawing follows.
  const shown = useAfterPaint(worked);
  const drawn = useMemo(
    () => ({
      ...shown,
      picture: shown.open && drawnOf(drawing, shown.open, shown.gives, bench),
    }),
    [drawing, shown, bench],
  );
  const draft = open?.draft;
  const pending = pendingOf(state.record) !== undefined;
  // What is said besides is said of what is settled: a key press doesn't wait for it.
  const planned = useMemo(
    () => (pending || !draft ? undefined : page?.work(draft, bench)),
    [pending, draft, page, bench],
  );
  const typed = open && typedNumber(open, typing.field, bench);
  const show = useSame((over: Panel) => {
    typing.close();
    setPanel(over);
  });
  const touch = useSame((touched: Touch) => {
    if ('gives' in touched) return show(panelFor(state, touched));
    setPanel(undefined);
    typing.pick(touched.field);
  });
  const chooseSide = useSame((one: string) => {
    typing.settle();
    setSide(one);
  });
  const headline = useMemo(() => headlineOf(gives, state.answer, typed), [gives, state, typed]);
  const hand = useAlike({
    ...{ state, id, bench, side, sides, open, onDo, typing, gives, planned, awaited, headline },
    refusals: useRefusals(refused),
    ...{ panel, setPanel, more, setMore, show, pending, chooseSide, touch },
    rested: useRested(state.record.pending),
    last: useLast(state, id, since),
  });
  return { hand, drawn };
}

/** The first of its sides of which something is made otherwise than asked: that is what its line tells of. */
function sideToSee({ answer }: State, id: string): string | undefined {
  const otherwise = new Set(
    answer.conflicts.flatMap(({ home }) => (readHome(home).id === id ? readHome(home).side : [])),
  );
  return answer.works.get(id)?.sides.find(({ side }) => otherwise.has(side))?.side;
}

/** How many things were refused since the work was opened. */
function useRefusals(refused: Refused | undefined): number {
  const met = useRef({ refused, count: 0 });
  if (met.current.refused !== refused) {
    met.current = { refused, count: met.current.count + (refused ? 1 : 0) };
  }
  return met.current.count;
}

function panelFor({ answer }: State, { gives }: Extract<Touch, { gives: unknown }>): Panel {
  const { home, result } = gives;
  if (gives.before !== undefined) return { of: 'made', home, fact: gives.before };
  const fact = answer.sound.facts.get(home)?.at(-1)?.id;
  const isMade = fact !== undefined && result.ok && result.state === 'made';
  return isMade ? { of: 'made', home, fact } : { of: 'name', home };
}

/** The last change of this work since it was opened, which can be taken back here. */
function useLast({ log }: State, id: string, since: number | undefined) {
  const newest = since ?? log.at(-1)?.id ?? 0;
  const first = useRef(newest).current;
  return useMemo(() => {
    const last = [...log].reverse().find(({ press }) => !press);
    const slot = last?.edits[0]?.slot;
    const isOwn = last !== undefined && last.id > first && slot?.[1] === id;
    return isOwn && last.what !== 'undo' && slot ? { change: last.id, slot } : undefined;
  }, [log, id, first]);
}
