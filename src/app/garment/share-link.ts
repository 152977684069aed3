import { checksum } from '../../garment/checksum.ts';
import { type HandedRead, readHanded } from '../../garment/share/read-shared.ts';
import type { SharedGarment } from '../../garment/share/shared.ts';

/** The version of a link's form. That of the garment is its own. */
const VERSION = 1;

/** The longest link that is made, in characters: what messages and codes carry without cutting it. */
export const LONGEST_LINK = 8000;

/** Of what is opened, the longest, and the most it may be when it is unpacked, in bytes. */
const LONGEST_OPENED = 100_000;
const MOST_UNPACKED = 1_500_000;

/** The address under which a garment is opened that was handed on. */
const PLACE = '#/garments/receive/';

/**
 * A garment as the part of an address after `#`: the version, how it is packed, a checksum, and
 * the record, packed as RFC 1951 (deflate) has it where the browser can, in the letters of RFC 4648,
 * section 5. No server is ever sent it.
 */
export async function linkOf(garment: SharedGarment): Promise<string> {
  const text = JSON.stringify(garment);
  const bytes = new TextEncoder().encode(text);
  const packed = await deflated(bytes);
  const data = letters(packed ?? bytes);
  return `${PLACE}${VERSION}.${packed ? 'd' : 'p'}.${checksum(text)}.${data}`;
}

/** Whether an address hands a garment on. */
export function isLink(hash: string): boolean {
  return hash.startsWith(PLACE) && hash.length > PLACE.length;
}

/** Reads a link, whoever made it: never throws, and unpacks no more than a garment can be. */
export async function readLink(hash: string): Promise<HandedRead> {
  const said = hash.slice(PLACE.length);
  const [, version] = /^(\d{1,6})\./.exec(said) ?? [];
  if (version === undefined) return fault('damaged');
  if (Number(version) > VERSION) return fault('newer');
  if (said.length > LONGEST_OPENED) return fault('too-large');
  const [, , way, sum, data] = /^(\d+)\.([dp])\.([0-9a-f]{8})\.([\w-]+)$/.exec(said) ?? [];
  const bytes = data === undefined ? undefined : bytesOf(data);
  if (!bytes) return fault('damaged');
  const unpacked = way === 'p' ? bytes : await inflated(bytes);
  if (typeof unpacked === 'string') return fault(unpacked);
  return readText(unpacked, sum ?? '');
}

function readText(bytes: Uint8Array, sum: string): HandedRead {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    if (checksum(text) !== sum) return fault('damaged');
    return readHanded(JSON.parse(text));
  } catch {
    return fault('damaged');
  }
}

function fault(why: Extract<HandedRead, { ok: false }>['fault']): HandedRead {
  return { ok: false, fault: why };
}

async function deflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array | undefined> {
  if (typeof CompressionStream === 'undefined') return undefined;
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** Unpacks until it is done, or more than is ever wanted. */
async function inflated(
  bytes: Uint8Array<ArrayBuffer>,
): Promise<Uint8Array | 'damaged' | 'too-large' | 'cant-unpack'> {
  if (typeof DecompressionStream === 'undefined') return 'cant-unpack';
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'));
  const reader = stream.getReader();
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      size += value.length;
      if (size > MOST_UNPACKED) {
        await reader.cancel().catch(() => undefined);
        return 'too-large';
      }
      parts.push(value);
    }
  } catch {
    return 'damaged';
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

/** Bytes in letters that stand in an address as they are. */
function letters(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}

function bytesOf(data: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    const text = atob(data.replace(/-/g, '+').replace(/_/g, '/'));
    return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  } catch {
    return undefined;
  }
}
