import { type Layer, SHAPES } from './network.ts';

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
/** Bits. */
const BYTE = 8;

/**
 * Layers packed as base64: for each output the step of its weights and its bias (32-bit floats,
 * lowest byte first), then its weights as signed bytes, in steps.
 */
export function unpackLayers(packed: string): Layer[] {
  const bytes = bytesOf(packed);
  const view = new DataView(bytes.buffer);
  let at = 0;
  return SHAPES.map(([inputs, outputs]) => {
    const weights = new Float32Array(inputs * outputs);
    const biases = new Float32Array(outputs);
    for (let to = 0; to < outputs; to++) {
      const step = view.getFloat32(at, true);
      biases[to] = view.getFloat32(at + 4, true);
      at += 8;
      for (let i = 0; i < inputs; i++) weights[to * inputs + i] = step * view.getInt8(at++);
    }
    return { weights, biases };
  });
}

function bytesOf(text: string): Uint8Array {
  const plain = text.replace(/=+$/, '');
  const bytes = new Uint8Array(Math.floor((plain.length * 3) / 4));
  let [bits, held, to] = [0, 0, 0];
  for (const letter of plain) {
    held = ((held << 6) | ALPHABET.indexOf(letter)) & 0xffff;
    bits += 6;
    if (bits < BYTE) continue;
    bits -= BYTE;
    bytes[to++] = held >> bits;
  }
  return bytes;
}
