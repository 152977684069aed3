/** Drawings of measurements as SVG text (W3C, Scalable Vector Graphics 2), px of the screen. */
export const WIDTH = 800;
export const HEIGHT = 500;
const FIELD = { left: 70, right: WIDTH - 20, top: 40, bottom: HEIGHT - 50 };

/** Where a value is drawn, and the axis itself. */
interface Scale {
  at(value: number): number;
  readonly drawn: string;
}

/** @param parts what stands under the title, drawn in order */
export function picture(title: string, height: number, parts: readonly string[]): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}" font-family="sans-serif" font-size="12">
<rect width="100%" height="100%" fill="#fff"/>
<text x="20" y="24" font-size="15">${escaped(title)}</text>
${parts.join('\n')}
</svg>
`;
}

/** @param anchor where the text's own start, middle or end is put */
export function text(x: number, y: number, words: string, anchor = 'start', more = ''): string {
  return `<text x="${round(x)}" y="${round(y)}" text-anchor="${anchor}"${more}>${escaped(words)}</text>`;
}

/** Tens at equal steps; values beyond either end are drawn at it. */
export function logAxis(way: 'x' | 'y', least: number, most: number, name: string): Scale {
  const tens = Math.round(Math.log10(most / least));
  const place = placing(way, (value) => Math.log10(Math.max(value, least) / least) / tens);
  const ticks = Array.from({ length: tens + 1 }, (_, i) => {
    const value = Number((least * 10 ** i).toPrecision(1));
    return { value, shown: String(value) };
  });
  return { at: place, drawn: axis(way, place, ticks, name) };
}

/** From none to all, upwards. */
export function shareAxis(name: string): Scale {
  const place = placing('y', (value) => value);
  const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1].map((value) => ({
    value,
    shown: `${Math.round(100 * value)} %`,
  }));
  return { at: place, drawn: axis('y', place, ticks, name) };
}

function placing(way: 'x' | 'y', share: (value: number) => number): Scale['at'] {
  const [from, to] = way === 'x' ? [FIELD.left, FIELD.right] : [FIELD.bottom, FIELD.top];
  return (value) => round(from + (to - from) * Math.min(1, Math.max(0, share(value))));
}

function axis(
  way: 'x' | 'y',
  at: Scale['at'],
  ticks: readonly { value: number; shown: string }[],
  name: string,
): string {
  const { left, right, top, bottom } = FIELD;
  const middle = (top + bottom) / 2;
  const marks = ticks.map(({ value, shown }) => {
    const place = at(value);
    return way === 'x'
      ? `<path d="M${place},${top}V${bottom}" stroke="#ddd"/>${text(place, bottom + 18, shown, 'middle')}`
      : `<path d="M${left},${place}H${right}" stroke="#ddd"/>${text(left - 6, place + 4, shown, 'end')}`;
  });
  const title =
    way === 'x'
      ? text((left + right) / 2, HEIGHT - 10, name, 'middle')
      : text(16, middle, name, 'middle', ` transform="rotate(-90 16 ${middle})"`);
  return [...marks, title].join('');
}

const ROW = 18;
const NAMES = 300;

/** A bar a row, as long as all of its counts together; each count has its colour. */
export function bars(
  rows: readonly { readonly name: string; readonly counts: readonly number[] }[],
  colours: readonly string[],
  top: number,
) {
  const most = Math.max(1, ...rows.map(({ counts }) => total(counts)));
  const unit = (WIDTH - NAMES - 50) / most;
  const parts = rows.map(({ name, counts }, row) => {
    const y = top + row * ROW;
    const pieces = counts.map((count, i) => {
      const x = NAMES + unit * total(counts.slice(0, i));
      if (count === 0) return '';
      const told = text(x + (unit * count) / 2, y + 12, String(count), 'middle');
      return `<rect x="${round(x)}" y="${y}" width="${round(unit * count)}" height="${ROW - 3}" fill="${colours[i]}"/>${told}`;
    });
    return text(NAMES - 8, y + 12, name, 'end') + pieces.join('');
  });
  return { parts, height: top + rows.length * ROW + 15 };
}

function total(counts: readonly number[]): number {
  return counts.reduce((sum, count) => sum + count, 0);
}

function round(px: number): number {
  return Math.round(10 * px) / 10;
}

function escaped(words: string): string {
  return words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
