import { useMemo } from 'preact/hooks';
import { SCREEN_WORDS } from '#words/home-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { TapeScreen } from '../../screens/tape/tape-screen.tsx';
import { type Last, openingDraft } from '../start/last.ts';
import { loaderOf } from '../start/registry.ts';
import { readRoute } from '../start/route.ts';
import type { Address } from '../start/use-address.ts';
import { sharedPhoto } from './shared-photo.ts';
import { typedInto } from './tape-place.tsx';
import { TAPE_SERVICES } from './tape-services.ts';

interface Props {
  address: Address;
  bench: Bench;
  last: Last;
  onHome: () => void;
}

/** A tape read before a field has asked: from home, or off a photo another app has shared. */
export function TapeAlone({ address, bench, last, onHome }: Props) {
  const into = (screen: string) => async (text: string) => {
    const calculation = await loaderOf(screen)();
    if (!calculation) return;
    const { taped = 'length', ...draft } = openingDraft(calculation, {}, last[screen], bench);
    address.go({ screen, mode: '', draft: typedInto(calculation, draft, taped, text, bench) });
  };
  const screens = [...asking(last), 'convert'].filter((id, i, all) => all.indexOf(id) === i);
  const isShared = 'shared' in address.route.draft;
  const shared = useMemo(() => {
    if (!isShared) return undefined;
    return async () => {
      const photo = await sharedPhoto();
      // It is handed over once: who comes back here is not to be told that it didn't arrive.
      // Who has gone meanwhile is not called back.
      if ('shared' in readRoute(location.hash).draft) {
        address.type({ screen: 'tape', mode: '', draft: {} });
        address.flush();
      }
      return photo;
    };
  }, [isShared]);
  return (
    <TapeScreen
      bench={bench}
      field={undefined}
      uses={screens.map((id) => ({ name: nameOf(id), onUse: into(id) }))}
      shared={shared}
      services={TAPE_SERVICES}
      onLeave={onHome}
    />
  );
}

/** The calculations a field of which was asking for a tape when they were last seen. */
function asking(last: Last): string[] {
  return Object.keys(last).filter((id) => id in SCREEN_WORDS && /(^|&)taped=/.test(last[id] ?? ''));
}

function nameOf(id: string): string {
  const titles: Readonly<Record<string, string>> = SCREEN_WORDS;
  return titles[id] ?? id;
}
