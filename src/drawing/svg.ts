import { boundsOf, type Figure, type FigureShape, type LineStyle } from './figure.ts';

/** How each kind of line is drawn in a file: strokes in mm, so that they are the same in any program. */
const STROKES: Readonly<Record<LineStyle, string>> = {
  cloth: 'stroke="#000" stroke-width="0.35"',
  fold: 'stroke="#000" stroke-width="0.25" stroke-dasharray="4 1.3 0.7 1.3"',
  stitch: 'stroke="#1a3f8a" stroke-width="0.3" stroke-dasharray="2 1.4"',
  cut: 'stroke="#b00" stroke-width="0.2"',
  measure: 'stroke="#777" stroke-width="0.15"',
  hole: 'stroke="#000" stroke-width="0.2"',
  clash: 'stroke="#b00" stroke-width="0.5"',
};

/** Room round a drawing, and the height of its lettering, in mm. */
const ROOM = 5;
const LETTER = 3;

/**
 * A drawing as an SVG file in millimetres: one unit of the drawing is 1 mm, and so its width and
 * height say, for programs and cutting machines. Each kind of line is a group with its name.
 */
export function svgOf(name: string, figure: Figure): string {
  const { x, y, width, height } = boundsOf(figure);
  const wide = number(width + 2 * ROOM);
  const high = number(height + 2 * ROOM);
  const styles = [...new Set(figure.flatMap((shape) => ('line' in shape ? [shape.line] : [])))];
  const groups = styles.map((style) => {
    const paths = figure.filter((shape) => 'line' in shape && shape.line === style).map(pathOf);
    return `<g id="${style}" fill="none" ${STROKES[style]}>${paths.join('')}</g>`;
  });
  const labels = figure.flatMap((shape) =>
    'label' in shape
      ? [`<text x="${number(shape.at.x)}" y="${number(shape.at.y)}">${escaped(shape.label)}</text>`]
      : [],
  );
  const lettering =
    labels.length === 0
      ? ''
      : `<g id="text" font-family="sans-serif" font-size="${LETTER}">${labels.join('')}</g>`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${wide}mm" height="${high}mm" viewBox="${number(x - ROOM)} ${number(y - ROOM)} ${wide} ${high}">`,
    `<title>${escaped(name)}</title>`,
    ...groups,
    lettering,
    '</svg>',
    '',
  ].join('\n');
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
