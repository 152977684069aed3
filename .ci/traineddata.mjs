/**
 * The parts of a trained-data file, in the order of its directory (TessdataType in
 * tesseract's ccutil/tessdatamanager.h): only those that reading with the neural net needs.
 */
const NEEDED = new Map([
  [17, 'lstm'],
  [21, 'lstm-unicharset'],
  [22, 'lstm-recoder'],
]);
/** Kept where it is there: settings the net was trained with, and the version. */
const WELCOME = [0, 23];

/**
 * The same trained data without its word lists and everything else a row of digits has no use
 * for. The container is a count (int32), an offset for each part (int64, −1 where there is
 * none), then the parts, all little-endian.
 *
 * @param {Buffer} data
 */
export function onlyForDigits(data) {
  const count = data.readInt32LE(0);
  const head = 4 + 8 * count;
  if (count < 24 || count > 64 || data.length < head) {
    throw new RangeError(`no trained data: it lists ${count} parts`);
  }
  const offsets = Array.from({ length: count }, (_, i) => Number(data.readBigInt64LE(4 + 8 * i)));
  const ends = [...offsets.filter((offset) => offset >= 0), data.length].sort((a, b) => a - b);
  const parts = offsets.map((offset, i) => {
    const needed = NEEDED.get(i);
    if (needed && offset < 0) throw new RangeError(`trained data without its part ${needed}`);
    if (offset < 0 || !(needed || WELCOME.includes(i))) return undefined;
    return data.subarray(
      offset,
      ends.find((end) => end > offset),
    );
  });
  const directory = Buffer.alloc(head, 0xff); // −1 everywhere
  directory.writeInt32LE(count, 0);
  let at = head;
  parts.forEach((part, i) => {
    if (!part) return;
    directory.writeBigInt64LE(BigInt(at), 4 + 8 * i);
    at += part.length;
  });
  return Buffer.concat([directory, ...parts.filter((part) => part !== undefined)]);
}
