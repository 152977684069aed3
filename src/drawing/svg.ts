import { type Figure, type FigureShape, type LineStyle, stylesOf } from './figure.ts';
import { letteredBounds } from './lettered.ts';
import { LINE_LOOKS } from './line-looks.ts';

/** Room round a drawing, and its lettering, in mm. */
const ROOM = 5;
const LETTER = { high: 3, wide: 3 * 0.6 };

/**
 * A drawing as an SVG file in millimetres: one unit of the drawing is 1 mm, and so its width and
 * height say, for programs and cutting machines. Each kind of line is a group with its name.
 *
 * @param about what a reader of the file should know, in words
 */
export function svgOf(name: string, figure: Figure, about: string): string {
  const { x, y, width, height } = letteredBounds(figure, LETTER);
  const wide = number(width + 2 * ROOM);
  const high = number(height + 2 * ROOM);
  const groups = stylesOf(figure).map((style) => {
    const paths = figure.filter((shape) => 'line' in shape && shape.line === style).map(pathOf);
    return `<g id="${style}" fill="none" ${strokeOf(style)}>${paths.join('')}</g>`;
  });
  const labels = figure.flatMap((shape) =>
    'label' in shape
      ? [`<text x="${number(shape.at.x)}" y="${number(shape.at.y)}">${escaped(shape.label)}</text>`]
      : [],
  );
  const lettering =
    labels.length === 0
      ? ''
      : `<g id="text" font-family="sans-serif" font-size="${LETTER.high}">${labels.join('')}</g>`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${wide}mm" height="${high}mm" viewBox="${number(x - ROOM)} ${number(y - ROOM)} ${wide} ${high}">`,
    `<title>${escaped(name)}</title>`,
    `<desc>${escaped(about)}</desc>`,
    ...groups,
    lettering,
    '</svg>',
    '',
  ].join('\n');
}

/** Strokes in mm, so that they are the same in any program. */
function strokeOf(style: LineStyle): string {
  const { weight, dash, colour } = LINE_LOOKS[style];
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  return `stroke="${colour}" stroke-width="${weight}"${dashes}`;
}

function pathOf(shape: FigureShape): string {
  if (!('line' in shape)) return '';
  if (shape.ring) {
    const { at, radius } = shape.ring;
    return `<circle cx="${number(at.x)}" cy="${number(at.y)}" r="${number(radius)}"/>`;
  }
  const points = shape.points.map(({ x, y }) => `${number(x)} ${number(y)}`);
  return `<path d="M${points.join('L')}"/>`;
}

/** To a ten-thousandth of a millimetre. */
function number(value: number): string {
  return String(Math.round(value * 10_000) / 10_000);
}

/** Text that may stand in XML: what it doesn't allow at all is left out. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}
