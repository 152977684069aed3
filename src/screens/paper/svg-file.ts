import { paperWords as words } from '#words/paper/paper-words.ts';
import { svgOf } from '../../drawing/svg.ts';
import { templateFigure } from '../../drawing/template-figure.ts';
import type { Part } from './choices.ts';

/** One run or drawing as an SVG file in millimetres. */
export function svgFile({ label, strips, drawings }: Part): Blob {
  const [strip] = strips;
  const figure = strip ? templateFigure(strip) : (drawings[0]?.figure ?? []);
  return new Blob([svgOf(label, figure, words.aboutSvg)], { type: 'image/svg+xml' });
}
