import {
  PDFDocument,
  type PDFFont,
  type PDFPage,
  PrintScaling,
  rgb,
  StandardFonts,
} from '@cantoo/pdf-lib';
import { TYPE_SIZE } from '../drawing/helvetica.ts';
import type { PaperPage, PaperShape } from '../drawing/paper-job.ts';
import { asPrinted } from '../drawing/paper-letters.ts';

/** Points of a PDF to a millimetre. */
const POINTS = 72 / 25.4;
const BLACK = rgb(0, 0, 0);

/** Pages as a PDF file that asks to be printed as it is. */
export async function pdfOf(
  title: string,
  pages: readonly PaperPage[],
  onProgress: (done: number) => void,
): Promise<Uint8Array<ArrayBuffer>> {
  const document = await PDFDocument.create();
  document.setTitle(title, { showInWindowTitleBar: true });
  document.setProducer('');
  document.setCreator('');
  document.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const fonts: Fonts = {
    plain: await document.embedFont(StandardFonts.Helvetica),
    bold: await document.embedFont(StandardFonts.HelveticaBold),
  };
  for (const [i, page] of pages.entries()) {
    drawPage(document.addPage([page.width * POINTS, page.height * POINTS]), page, fonts);
    onProgress((i + 1) / (pages.length + 1));
  }
  const bytes = await document.save();
  return new Uint8Array(bytes);
}

/** A face that nothing is written in isn't in the file. */
type Fonts = Readonly<Record<'plain' | 'bold', PDFFont>>;

function drawPage(paper: PDFPage, { height, shapes }: PaperPage, fonts: Fonts): void {
  const place = ({ x, y }: { x: number; y: number }) => ({
    x: x * POINTS,
    y: (height - y) * POINTS,
  });
  for (const shape of shapes) draw(paper, shape, place, fonts);
}

type Place = (at: { x: number; y: number }) => { x: number; y: number };

function draw(paper: PDFPage, shape: PaperShape, place: Place, fonts: Fonts): void {
  switch (shape.kind) {
    case 'line':
      paper.drawLine({
        start: place(shape.from),
        end: place(shape.to),
        thickness: shape.weight * POINTS,
      });
      return;
    case 'circle':
      paper.drawCircle({
        ...place(shape.at),
        size: shape.radius * POINTS,
        // Without a colour of its own the ring would be a black disc.
        borderColor: BLACK,
        borderWidth: shape.weight * POINTS,
      });
      return;
    case 'path':
      paper.drawSvgPath(pathOf(shape.points), {
        x: 0,
        y: paper.getHeight(),
        borderColor: BLACK,
        borderWidth: shape.weight * POINTS,
        ...(shape.dash.length > 0 && { borderDashArray: shape.dash.map((mm) => mm * POINTS) }),
      });
      return;
    case 'text':
      paper.drawText(asPrinted(shape.text), {
        ...place(shape.at),
        size: shape.size * TYPE_SIZE * POINTS,
        font: shape.bold ? fonts.bold : fonts.plain,
      });
  }
}

/** A line from point to point in PDF points, downwards as on the page. */
function pathOf(points: readonly { x: number; y: number }[]): string {
  return `M${points.map(({ x, y }) => `${fixed(x)} ${fixed(y)}`).join('L')}`;
}

/** Path data is not written with exponents; a millionth of a point is far below any printer. */
function fixed(mm: number): string {
  return (mm * POINTS).toFixed(6);
}
