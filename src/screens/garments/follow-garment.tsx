import { useRef } from 'preact/hooks';
import { garmentFollowWords as words } from '#words/garment-follow-words.ts';
import { garmentWords } from '#words/garment-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { adopt } from '../../controls/adopt.ts';
import { FaultList } from '../../controls/fault-list.tsx';
import { FollowRun, type FollowServices } from '../../controls/follow-run.tsx';
import { Rich } from '../../controls/rich.tsx';
import { madeOf, plannedOf } from '../../garment/as-made.ts';
import {
  type FollowedMark,
  type FollowedRun,
  isBeingKept,
  markBefore,
  nextToMake,
} from '../../garment/following.ts';
import type { Garment, Kept } from '../../garment/garment.ts';
import type { Blocked, SpacingFault, Stop } from '../../garment/stop.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { Fetched } from './fetched.tsx';
import type { EndProps } from './follow-end.tsx';
import css from './follow-garment.css?inline';

adopt(css);

export interface FollowGarmentDeeds {
  goTo(mark: FollowedMark | undefined): void;
  /** A mark is made: where it was measured, empty when as planned; undefined when not made after all. */
  made(stop: Stop, label: string, typed: string | undefined): void;
  respace(stop: Stop): void;
  undoSpacing: (() => void) | undefined;
  openKept(kept: Kept): void;
  /** Tries again what could not be kept; undefined when nothing is held. */
  keepNow: (() => void) | undefined;
  leave(): void;
}

interface Props {
  garment: Garment;
  /** The same as it is on the disk: what differs is still being kept. */
  stored: Garment;
  stops: readonly Stop[];
  blocked: readonly Blocked[];
  /** The mark that is being made; undefined at the end. */
  here: FollowedMark | undefined;
  bench: Bench;
  services: FollowServices;
  /** Why something was not kept. */
  said: string | undefined;
  spacingFault: SpacingFault | undefined;
  deeds: FollowGarmentDeeds;
}

/** All marks of a garment, run after run, one at a time. */
export function FollowGarment(props: Props) {
  const { stops, here, deeds } = props;
  const runs = stops.map(({ named, kept, run }): FollowedRun => {
    return { labels: named.run.marks.map(({ label }) => label), kept: kept.runs[run] };
  });
  const stop = here && stops[here.run];
  if (!here || !stop) {
    const end: EndProps = {
      ...props,
      runs,
      onFirstLeft: () => deeds.goTo(nextToMake(runs)),
      onBack: () => deeds.goTo(markBefore(runs, undefined)),
    };
    return <Fetched load={loadEnd} give={end} onLeave={deeds.leave} />;
  }
  return <OneMark {...props} runs={runs} here={here} stop={stop} />;
}

const loadEnd = () => import('./follow-end.tsx').then((part) => part.FollowEnd);

function OneMark(props: Props & { runs: readonly FollowedRun[]; here: FollowedMark; stop: Stop }) {
  const { garment, stop, runs, here, bench, deeds } = props;
  const { kept, named } = stop;
  const label = runs[here.run]?.labels[here.mark] ?? '';
  const made = madeOf(kept.runs[stop.run], label);
  const begins = useBegins(here);
  const name = stop.oneOfSeveral ? `${kept.name}, ${named.name}` : kept.name;
  const begin = begins ? words.newRun(name, named.run.datum) : undefined;
  return (
    <FollowRun
      named={named}
      at={here.mark}
      made={made}
      planned={plannedFor(stop, label)}
      bench={bench}
      services={props.services}
      before={begin}
      turn={`${here.run}.${here.mark}`}
      of={
        begin === undefined && (
          <p class="of">{[name, garmentWords.stages[kept.stage], garment.name].join(' · ')}</p>
        )
      }
      notes={<Notes {...props} label={label} made={made} begin={begin} />}
      actions={
        <>
          {made !== undefined && (
            <button type="button" onClick={() => deeds.made(stop, label, undefined)}>
              {words.notMade}
            </button>
          )}
          {deeds.keepNow && (
            <button type="button" class="main" onClick={deeds.keepNow}>
              {garmentWords.tryNow}
            </button>
          )}
          <Spacing {...props} />
        </>
      }
      nextWords={made === undefined ? words.next : words.onward}
      onNext={() => {
        if (made === undefined) deeds.made(stop, label, '');
        deeds.goTo(nextToMake(runs, here));
      }}
      onBack={() => deeds.goTo(markBefore(runs, here))}
      onPick={(mark) => deeds.goTo({ run: here.run, mark })}
      onMeasured={(measured, typed) => deeds.made(stop, measured, typed)}
      onLeave={deeds.leave}
    />
  );
}

/** The plan that was kept of a mark that is now where it was measured. */
function plannedFor({ kept, run, named }: Stop, label: string): ExactLength | undefined {
  const sewn = named.run.marks.some((mark) => mark.label === label && mark.kind === 'sewn');
  const planned = kept.runs[run] && plannedOf(kept.runs[run], label);
  return sewn && planned !== undefined ? exactLength(planned) : undefined;
}

/** What is to be known at this mark: that a run begins, its cautions, what was not kept. */
function Notes(
  props: Props & {
    stop: Stop;
    label: string;
    made: string | undefined;
    begin: string | undefined;
  },
) {
  const { said, blocked, stored, stop, label, made, begin, spacingFault, bench, deeds } = props;
  return (
    <>
      {said !== undefined && (
        <p class="note warning" role="status">
          {said}
        </p>
      )}
      {made !== undefined && isBeingKept(stored, stop.kept, stop.run, label) ? (
        <p class="note">{words.keeping}</p>
      ) : (
        made === '' && <p class="note">{words.asPlanned}</p>
      )}
      {begin !== undefined && (
        <p class="note">
          <b>{begin}</b>
        </p>
      )}
      {spacingFault && (
        <div class="answer" role="status">
          <p>{words.spacingFails}</p>
          <FaultList {...spacingFault} bench={bench} />
        </div>
      )}
      {/* Spaced anew, it may say what gives way. */}
      {(begin !== undefined || deeds.undoSpacing) &&
        stop.cautions.map((caution) => (
          <p class="note warning" key={caution}>
            <Rich text={caution} />
          </p>
        ))}
      {begin !== undefined && blocked.length > 0 && (
        <p class="note">{words.leftOut(blocked.map(({ kept }) => kept.name).join(', '))}</p>
      )}
    </>
  );
}

/** Offered once a mark of the run was made elsewhere; undone by one press. */
function Spacing({ stop, deeds }: Props & { stop: Stop }) {
  const elsewhere = Object.values(stop.kept.runs[stop.run]?.made ?? {}).some(
    (typed) => typed !== '',
  );
  return (
    <>
      {deeds.undoSpacing && (
        <button type="button" class="main" onClick={deeds.undoSpacing}>
          {words.undoSpacing}
        </button>
      )}
      {stop.canRespace && elsewhere && !deeds.undoSpacing && (
        <button type="button" class="main" onClick={() => deeds.respace(stop)}>
          {words.respace}
        </button>
      )}
    </>
  );
}

/** Whether this is the first mark that is come to on its run. */
function useBegins({ run, mark }: FollowedMark): boolean {
  const arrived = useRef({ run: -1, mark: -1 });
  if (arrived.current.run !== run) arrived.current = { run, mark };
  return arrived.current.mark === mark;
}
