import { useEffect, useMemo, useState } from 'preact/hooks';
import { calculationName } from '#words/calculations/calculation-names.ts';
import { hairlineWords } from '#words/tape/hairline-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { heldOf, type Paged } from '../../calculation/page.ts';
import { askNewer } from '../../controls/newer/newer-ask.ts';
import { TapeScreen } from '../../screens/tape/tape-screen.tsx';
import { sharedFile } from '../offline/shared-file.ts';
import { type Last, openingDraft } from '../start/last.ts';
import { loaderOf } from '../start/registry.ts';
import { readRoute } from '../start/route.ts';
import type { Address } from '../start/use-address.ts';
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
  const [unused, setUnused] = useState<string>();
  const into = (screen: string) => async (text: string) => {
    setUnused(undefined);
    const calculation = await fetched(screen);
    if (!calculation) return setUnused(await whyUnused(nameOf(screen)));
    const { draft, page } = openingDraft(calculation, {}, last[screen], bench);
    const { taped = 'length', ...rest } = page;
    const typed = typedInto(calculation, { draft, page: rest }, taped, text, bench);
    address.go({ screen, mode: '', draft: heldOf(typed) });
  };
  const screens = [...asking(last), 'convert'].filter((id, i, all) => all.indexOf(id) === i);
  // With a photo open the page may outlive its build, and then they can't be had any more.
  useEffect(() => {
    for (const screen of screens) void fetched(screen);
  }, []);
  const isShared = 'shared' in address.route.draft;
  const shared = useMemo(() => {
    if (!isShared) return undefined;
    return async () => {
      const photo = await sharedFile();
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
      unused={unused}
      shared={shared}
      services={TAPE_SERVICES}
      onLeave={onHome}
    />
  );
}

/** A calculation; undefined where it can't be fetched. */
async function fetched(screen: string): Promise<Paged | undefined> {
  return Promise.resolve(loaderOf(screen)()).catch(() => undefined);
}

/** Why a number did not go to a calculation that can't be fetched, and where it can. */
async function whyUnused(name: string): Promise<string> {
  const newer = await askNewer('use');
  return newer ? `${name}: ${newer}` : hairlineWords.unused(name, nameOf('convert'));
}

/** The calculations a field of which was asking for a tape when they were last seen. */
function asking(last: Last): string[] {
  return Object.keys(last).filter(
    (id) => calculationName(id) !== undefined && /(^|&)taped=/.test(last[id] ?? ''),
  );
}

function nameOf(id: string): string {
  return calculationName(id) ?? id;
}
