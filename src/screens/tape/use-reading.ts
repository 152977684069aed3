import { useEffect, useRef, useState } from 'preact/hooks';

import { openPhoto, type Photo, type PhotoFault } from '../../camera/photo.ts';
import type { TapeBridge } from '../../camera/tape-bridge.ts';
import type { Place, Reading } from '../../camera/tape-eye.ts';
import { TapeError, type TapeFault } from '../../camera/tape-fault.ts';

/** How far a photo has come. */
export type Stage =
  | { kind: 'choose'; fault?: PhotoFault | 'not-shared' }
  | { kind: 'opening' }
  | { kind: 'reading'; photo: Photo; done: number }
  /** `pointed`: where the maker touched a picture that could not be read, for it to be looked at there. */
  | { kind: 'read'; photo: Photo; reading: Reading; pointed?: Place }
  | { kind: 'failed'; photo: Photo; fault: TapeFault };

/**
 * From a file to a reading. Leaving ends all work; a newer photo takes the place of an older one.
 * @param bridge the same one as long as the screen is there
 */
export function useReading(bridge: TapeBridge) {
  const [stage, setStage] = useState<Stage>({ kind: 'choose' });
  const wish = useRef(new AbortController());
  useEffect(() => {
    bridge.warm();
    return () => {
      wish.current.abort();
      bridge.close();
    };
  }, [bridge]);

  /** Drops what is being done; what comes of it late is not shown. */
  function anew(): AbortSignal {
    wish.current.abort();
    wish.current = new AbortController();
    return wish.current.signal;
  }

  async function read(photo: Photo, signal = anew(), pointed?: Place): Promise<void> {
    const show = (next: Stage) => {
      if (!signal.aborted) setStage(next);
    };
    show({ kind: 'reading', photo, done: 0 });
    try {
      const progress = (done: number) => show({ kind: 'reading', photo, done });
      const reading = await bridge.read(photo.image, signal, progress, pointed);
      show({ kind: 'read', photo, reading, ...(pointed ? { pointed } : {}) });
    } catch (error) {
      show({ kind: 'failed', photo, fault: faultOf(error) });
    }
  }

  return {
    stage,
    read: (photo: Photo) => read(photo),
    /** Looks at a photo once more, where the maker touched it; that place is aimed at. */
    readAt: (photo: Photo, at: Place) => read({ ...photo, aimed: at }, anew(), at),
    async open(file: Blob | undefined): Promise<void> {
      const signal = anew();
      setStage(file ? { kind: 'opening' } : { kind: 'choose', fault: 'not-shared' });
      if (!file) return;
      const opened = await openPhoto(file);
      if (signal.aborted) return;
      if (opened.ok) await read(opened.value, signal);
      else setStage({ kind: 'choose', fault: opened.fault });
    },
    /** What the maker has answered or touched in place of what was read. */
    take: (photo: Photo, reading: Reading) => setStage({ kind: 'read', photo, reading }),
    stop() {
      anew();
      setStage({ kind: 'choose' });
    },
  };
}

function faultOf(error: unknown): TapeFault {
  return error instanceof TapeError ? error.fault : 'reader-failed';
}
