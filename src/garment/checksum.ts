/** x³² + x²⁶ + … + 1 with its bits turned round, as RFC 1952 (gzip), section 8, has it. */
const POLYNOMIAL = 0xedb88320;

/** What each byte does to the sum. */
const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let sum = byte;
  for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ POLYNOMIAL : sum >>> 1;
  return sum;
});

/**
 * The CRC-32 of a text in UTF-8, as eight digits from 0 to f: the sum that gzip files
 * carry (RFC 1952, section 8). Any change within four bytes alters it; of other changes it
 * misses one in four thousand million. It is no seal: whoever changes a text on purpose
 * can work it out anew.
 */
export function checksum(text: string): string {
  let sum = 0xffffffff;
  const add = (byte: number) => {
    sum = (TABLE[(sum ^ byte) & 0xff] ?? 0) ^ (sum >>> 8);
  };
  for (let i = 0; i < text.length; i++) {
    const code = text.codePointAt(i) ?? 0;
    addUtf8(code, add);
    if (code > 0xffff) i += 1; // it takes two places of the text
  }
  return ((sum ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}

/** The bytes of a character (UTF-8: RFC 3629, section 3). */
function addUtf8(code: number, add: (byte: number) => void): void {
  const rest = (bits: number) => add(0x80 | ((code >> bits) & 0x3f));
  if (code < 0x80) {
    add(code);
    return;
  }
  if (code < 0x800) add(0xc0 | (code >> 6));
  else {
    if (code < 0x10000) add(0xe0 | (code >> 12));
    else {
      add(0xf0 | (code >> 18));
      rest(12);
    }
    rest(6);
  }
  rest(0);
}
