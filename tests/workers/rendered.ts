import { createCanvas } from '@napi-rs/canvas';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A rendered page: grey, 0 is black, row by row. */
export interface RenderedPage {
  width: number;
  height: number;
  grey: Uint8Array;
  perMm: number;
}

/** Renders a PDF as a printer would see it. @param dpi dots to an inch */
export async function rendered(bytes: Uint8Array, dpi: number): Promise<RenderedPage[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: RenderedPage[] = [];
  for (let i = 1; i <= document.numPages; i++) {
    const page = await document.getPage(i);
    const viewport = page.getViewport({ scale: dpi / 72 });
    const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)];
    const canvas = createCanvas(width, height);
    await page.render({
      // The library's types know the browser's canvas only; this one has the same methods.
      canvas: canvas as unknown as HTMLCanvasElement,
      canvasContext: canvas.getContext('2d') as unknown as CanvasRenderingContext2D,
      viewport,
    }).promise;
    const { data } = canvas.getContext('2d').getImageData(0, 0, width, height);
    const grey = new Uint8Array(width * height);
    for (let at = 0; at < grey.length; at++) grey[at] = data[4 * at + 1] as number;
    pages.push({ width, height, grey, perMm: dpi / 25.4 });
  }
  await document.destroy();
  return pages;
}

/** What the file says of itself and of how it wants to be printed. */
export async function aboutOf(bytes: Uint8Array) {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const { info } = await document.getMetadata();
  const printing = await document.getViewerPreferences();
  await document.destroy();
  return { info: info as Record<string, unknown>, printing: printing as object | null };
}

/** Every piece of lettering of the first page. */
export async function textsOf(bytes: Uint8Array): Promise<string[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const { items } = await (await document.getPage(1)).getTextContent();
  await document.destroy();
  return items.flatMap((item) => ('str' in item ? [item.str] : []));
}

/** Where upright lines cross a height on the page: the middles of what is dark there, in mm. */
export function linesAt({ width, grey, perMm }: RenderedPage, y: number): number[] {
  const row = Math.round(y * perMm - 0.5) * width;
  return middles(width, perMm, (x) => grey[row + x]);
}

/** Where level lines cross an upright on the page, in mm from its upper edge. */
export function linesDown({ width, height, grey, perMm }: RenderedPage, x: number): number[] {
  const column = Math.round(x * perMm - 0.5);
  return middles(height, perMm, (y) => grey[y * width + column]);
}

function middles(length: number, perMm: number, greyAt: (at: number) => number | undefined) {
  const found: number[] = [];
  let [ink, moment] = [0, 0];
  for (let at = 0; at <= length; at++) {
    const dark = at < length ? 255 - (greyAt(at) ?? 255) : 0;
    if (dark > 8) {
      ink += dark;
      moment += dark * (at + 0.5);
    } else if (ink > 0) {
      found.push(moment / ink / perMm);
      [ink, moment] = [0, 0];
    }
  }
  return found;
}

/** Lettering of every page as the file has it: its foot line and size in mm, its type size in points. */
export async function textPlaces(bytes: Uint8Array) {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const mm = (points: number) => (points * 25.4) / 72;
  const pages = [];
  for (let i = 1; i <= document.numPages; i++) {
    const page = await document.getPage(i);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item) => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [, , , type = 0, x = 0, y = 0] = item.transform as number[];
      const place = {
        x: mm(x),
        foot: mm(height - y),
        wide: mm(item.width),
        high: mm(0.718 * type),
      };
      return [{ text: item.str, type, ...place }];
    });
    pages.push({ width: mm(width), height: mm(height), texts });
  }
  await document.destroy();
  return pages;
}
