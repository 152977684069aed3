import { fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { expect, vi } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import type { Photo } from '../../src/camera/photo.ts';
import { TapeScreen } from '../../src/screens/tape/tape-screen.tsx';
import type { TapeReading } from '../../src/tape/scales/tape-reading.ts';
import { benchOf } from '../controls/helpers.ts';

export const onUse = vi.fn();
export const onLeave = vi.fn();
export const bridge = {
  read: vi.fn(),
  frame: vi.fn(),
  snap: vi.fn(),
  touch: vi.fn(),
  warm: vi.fn(),
  close: vi.fn(),
};
export const letGo = vi.fn();
export const holdPage = vi.fn(() => letGo);
export const services = { bridge, speak: vi.fn(), keepAwake: () => () => undefined, holdPage };

/** A photo as it is, one px of it for one of the screen; the page of these tests has no canvas. */
export function takePhoto(): Photo {
  vi.clearAllMocks();
  history.replaceState(null, '');
  HTMLCanvasElement.prototype.getContext = () => null;
  bridge.snap.mockImplementation(async (at) => at);
  vi.stubGlobal(
    'DOMPoint',
    class {
      x: number;
      y: number;
      constructor(x: number, y: number) {
        this.x = x;
        this.y = y;
      }
      matrixTransform() {
        return this;
      }
    },
  );
  Object.defineProperty(SVGElement.prototype, 'getScreenCTM', {
    configurable: true,
    value: () => ({ inverse: () => ({ a: 1 }) }),
  });
  const image = { width: 1600, height: 1200, pixels: new Uint8Array(1) };
  return { picture: document.createElement('canvas'), image };
}

export function open(set: Partial<Bench> = {}, shared?: () => Promise<Blob | undefined>) {
  return render(
    <TapeScreen
      bench={benchOf(set)}
      field="Opening"
      uses={[{ name: 'Opening', onUse }]}
      shared={shared}
      services={services}
      onLeave={onLeave}
    />,
  );
}

/** Chooses a photo of which this is read. */
export async function choose(reading: TapeReading | Promise<never>) {
  bridge.read.mockReturnValue(Promise.resolve(reading));
  pick();
  await waitFor(() => expect(bridge.read).toHaveBeenCalled());
}

export function pick() {
  const file = new File(['photo'], 'photo.jpg', { type: 'image/jpeg' });
  fireEvent.change(screen.getByLabelText('Choose a photo'), { target: { files: [file] } });
}

/** A finger on the photo; the first is number 0. */
export function finger(kind: 'Down' | 'Move' | 'Up' | 'Cancel', x: number, y = 600, pointerId = 0) {
  const picture = screen.getByRole('group', { name: /^The photo/ });
  fireEvent[`pointer${kind}`](picture, { clientX: x, clientY: y, button: 0, pointerId });
}

export const button = (name: string) => screen.getByRole<HTMLButtonElement>('button', { name });
export const use = () => button('Use: Opening');
