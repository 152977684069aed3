import { useLoaded } from '../../controls/use-loaded.ts';
import type { State } from '../../garment/actions/state.ts';
import { type Next, nextOf } from '../../garment/next/next.ts';
import { homeOf, readHome } from '../../garment/record/home.ts';
import { GarmentHome } from '../../screens/garment/home/home.tsx';
import type { HomeWay } from '../../screens/garment/home/home-way.ts';

import { missingWay } from '../../screens/garment/home/missing-way.ts';
import { refusedSaid } from '../../screens/garment/said/refused-words.ts';
import { troubleWords } from '../../screens/garment/said/told-words.ts';
import { Fetched } from '../../screens/garments/fetched.tsx';
import { speak } from '../start/voice.ts';
import type { HandProps } from './hand-props.ts';
import { useInHand } from './in-hand.ts';
import { useLastHome } from './last-home.ts';
import { useDrawing } from './work-parts.tsx';

const loadWork = () => import('./work-place.tsx').then((part) => part.WorkPlace);
const loadAdd = () => import('./add-place.tsx').then((part) => part.AddPlace);
const loadOrder = () => import('./order-place.tsx').then((part) => part.OrderPlace);
const loadNote = () => import('./note-place.tsx').then((part) => part.NotePlace);
const loadNoted = () => import('./noted-place.tsx').then((part) => part.NotedPlace);
const loadMadeTo = () => import('./made-to-place.tsx').then((part) => part.MadeToPlace);
const loadReminder = () => import('./reminder-place.tsx').then((part) => part.ReminderPlace);
const loadDecision = () => import('./decision-place.tsx').then((part) => part.DecisionPlace);

const loadMaterials = () => import('./materials-place.tsx').then((part) => part.MaterialsPlace);
const loadLay = () => import('./lay-place.tsx').then((part) => part.LayPlace);
const loadMeasures = () => import('./measures-place.tsx').then((part) => part.MeasuresPlace);

/** What of a garment in hand the address says; over it what a change is asked before it is taken back. */
export function HandPlaces(props: HandProps) {
  const { hand } = props;
  const asks = hand.refused?.why === 'made to it' ? hand.refused : undefined;
  return (
    <>
      <Place {...props} />
      {asks && <Fetched load={loadMadeTo} give={{ ...props, asks }} />}
    </>
  );
}

/** The home of a garment where the address says nothing. */
function Place(props: HandProps) {
  const { state, bench, hand, address, id } = props;
  // Addresses of before followed a garment, or `only` one thing kept on it.
  const { d, n, q, m, by, only, w = only } = address.route.draft;
  const to = (draft: Readonly<Record<string, string>>) =>
    address.go({ screen: 'garments', mode: 'open', draft: { g: id, ...draft } });
  const home = () => to({});
  const refused = hand.refused && refusedSaid({ answer: state.answer, bench }, hand.refused);
  const said = props.said ?? refused;
  const shared = { ...props, said, onAgain: hand.trouble && hand.again, to, onDone: home };
  if (d !== undefined) {
    return <Fetched load={loadDecision} onLeave={home} give={{ ...shared, home: d }} />;
  }
  if (n !== undefined && state.answer.works.has(readHome(n).id)) {
    return <Fetched key={n} load={loadNote} onLeave={home} give={{ ...shared, home: n }} />;
  }
  if (w === 'add') return <Fetched load={loadAdd} onLeave={home} give={shared} />;
  if (w === 'measures') {
    return (
      <Fetched
        load={loadMeasures}
        onLeave={home}
        give={{ ...shared, first: q, read: by === 'read' }}
      />
    );
  }
  if (w === 'materials') return <Fetched load={loadMaterials} onLeave={home} give={shared} />;
  if (w === 'lay') {
    return <Fetched load={loadLay} onLeave={home} give={{ ...shared, cloth: m }} />;
  }
  if (w === 'order') return <Fetched load={loadOrder} onLeave={home} give={shared} />;
  if (w !== undefined && state.answer.works.has(w)) {
    return <Fetched key={w} load={loadWork} onLeave={home} give={{ ...shared, work: w }} />;
  }
  return <Home {...props} said={said} to={to} />;
}

type HomeProps = HandProps & { to: (draft: Readonly<Record<string, string>>) => void };

function Home({ store, address, bench, id, hand, state, said, news, to }: HomeProps) {
  const [inHand, setInHand] = useInHand(store, id);
  const next = nextOf(state.answer, inHand);
  const at = next.kind === 'decide' ? next.home : 'step' in next ? next.step.home : '';
  const drawing = useDrawing(state, at, bench);
  useLastHome(store, hand, state, next, bench);
  const reminder = useLoaded(loadReminder);
  const go = (way: HomeWay) => {
    switch (way.to) {
      case 'garments':
      case 'convert':
      case 'tape':
        return address.go({ screen: way.to, mode: '', draft: {} });
      case 'work':
        return to({ w: way.work });
      case 'decide':
        return to({ d: way.home });
      case 'sheet':
        return address.go({ screen: 'garments', mode: 'sheet', draft: { g: id } });
      case 'note':
        return to({ n: way.home });
      case 'missing':
        return to(missingDraft(state, way.step, way.read));
      default:
        return to({ w: way.to });
    }
  };
  const noted = [homeOf(readHome(at).id), at].filter((one) => state.answer.sound.notes.has(one));
  const notes = noted.length > 0 && (
    <Fetched
      load={loadNoted}
      give={{ state, store, homes: noted, onOpen: (home: string) => to({ n: home }) }}
    />
  );
  const missing = ({ step, trouble }: Extract<Next, { kind: 'missing' }>) =>
    troubleWords({ answer: state.answer, bench }, step.home, trouble);
  return (
    <GarmentHome
      {...{ state, bench, inHand, missing, said, drawing, notes }}
      news={
        <>
          {news}
          {reminder.state === 'here' && <reminder.value store={store} />}
        </>
      }
      waiting={hand.waiting}
      onAgain={hand.trouble && hand.again}
      onAct={hand.act}
      onInHand={setInHand}
      onGo={go}
      onSpeak={speak}
    />
  );
}

/** Where the number is given that a step lacks. */
function missingDraft(
  { answer }: State,
  home: string,
  read?: true,
): Readonly<Record<string, string>> {
  const next = nextOf(answer, home);
  if (next.kind !== 'missing') return { w: readHome(home).id };
  const way = missingWay(answer, next);
  return 'work' in way
    ? { w: way.work }
    : { w: 'measures', q: way.measure, ...(read && { by: 'read' }) };
}
