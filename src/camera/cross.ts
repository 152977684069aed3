import type { LiveReading } from '../tape/protocol.ts';
import { readingAt } from '../tape/scales/read-at.ts';
import type { Reading, Told } from './tape-eye.ts';

/** What the cross in the middle of the camera's picture reads. */
export type Seen =
  | { readonly held: false; readonly asks: boolean }
  | {
      readonly held: true;
      readonly at: Told;
      /** The edge the cross reads; every scale found while it reads none. */
      readonly outlined: Reading;
    };

export function underCross(looked: LiveReading): Seen {
  if (!looked.held) return looked;
  const { reading } = looked;
  const at = readingAt(reading, { x: (reading.width - 1) / 2, y: (reading.height - 1) / 2 });
  const scales = at.ok ? reading.scales.slice(at.scale, at.scale + 1) : reading.scales;
  return { held: true, at, outlined: { ...reading, scales } };
}
