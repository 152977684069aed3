import { useEffect, useState } from 'preact/hooks';
import type { Bench } from '../../calculation/bench.ts';
import { asOwn, type Handed, isHanded, readHanded } from '../../garment/share/read-shared.ts';
import { Receive, type Received } from '../../screens/garment/share/receive.tsx';
import type { Store } from '../../storage/store.ts';
import type { Address } from '../start/use-address.ts';
import { notKept, part } from './deeds.ts';
import { readFile } from './file.ts';
import { handedFile } from './handed-file.ts';
import { isLink, readLink } from './share-link.ts';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  /** The part of the address after its place. */
  hash: string;
  onLeave: () => void;
  /** A file that holds more than one garment, or a backup. */
  onBackup: (file: File) => void;
}

/** What was handed on by a link, or by a file that was touched or shared: shown first. */
export function ReceivePlace({ store, address, bench, hash, onLeave, onBackup }: Props) {
  const [received, setReceived] = useState<Received>();
  const [said, setSaid] = useState<string>();
  useEffect(() => {
    let gone = false;
    setReceived(undefined);
    void read(hash).then((now) => {
      if (gone) return;
      if (now instanceof File) onBackup(now);
      else setReceived(now);
    });
    return () => {
      gone = true;
    };
  }, [hash]);
  const keep = async (handed: Handed) => {
    try {
      const garment = asOwn(handed, crypto.randomUUID(), Date.now());
      const g = await (await part(import('./changes.ts'))).add(store, garment);
      address.go({ screen: 'garments', mode: 'open', draft: { g } });
    } catch (error) {
      setSaid(await notKept(error));
    }
  };
  return (
    <Receive
      {...{ received, said, onLeave }}
      hand={bench.hand}
      onKeep={(handed) => void keep(handed)}
    />
  );
}

async function read(hash: string): Promise<Received | File> {
  if (isLink(hash)) {
    const link = await readLink(hash);
    return link.ok ? { ...link, damaged: false } : link;
  }
  const file = await handedFile();
  if (!file) return { ok: false, fault: 'none' };
  return (await handedIn(file)) ?? file;
}

/** The garment of a file that was handed on; undefined where it is a backup, or none of ours. */
async function handedIn(file: File): Promise<Received | undefined> {
  const { signal } = new AbortController();
  const read = await readFile(file, { show: () => undefined, signal }).catch(() => undefined);
  if (!read?.ok) return undefined;
  const [garment, ...more] = read.garments;
  if (!garment || more.length > 0 || !isHanded(garment)) return undefined;
  const handed = readHanded(garment);
  return handed.ok ? { ...handed, damaged: read.damaged.has(garment.id) } : handed;
}
