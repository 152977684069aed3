import { useRef, useState } from 'preact/hooks';
import { layPlacesWords as words } from '#words/garment/garment-lay-places-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { adopt } from '../../controls/adopt.ts';
import { useBox } from '../../controls/use-box.ts';
import { exactLength, mm } from '../../lengths/length.ts';
import css from './lay-drawing.css?inline';
import { extentOf, type LayShown, movedOnCloth, type PieceShown, type Place } from './lay-shown.ts';
import { useLayView } from './use-lay-view.ts';

adopt(css);

export interface DrawingProps {
  lay: LayShown;
  bench: Bench;
  /** The piece that is looked at. */
  current: string | undefined;
  onPick: (key: string) => void;
  /** A piece was put elsewhere: by so much, in mm. */
  onPut: (key: string, by: Place) => void;
  /** Puts it on paper; undefined where no length may be told. */
  onPaper: (() => void) | undefined;
}

/** The lay to scale, cut end on top: panned with one finger, closer with two; the chosen piece is dragged. */
export function LayDrawing({ lay, bench, current, onPick, onPut, onPaper }: DrawingProps) {
  const said = (of: number) => onTape(exactLength(mm(of)), bench);
  const label = words.drawing(lay.pieces.length, said(lay.width), said(lay.length));
  const room = useRef<HTMLDivElement>(null);
  const box = useBox(room);
  const [drag, setDrag] = useState<{ key: string; by: Place }>();
  const find = (key: string) => lay.pieces.find((one) => one.key === key);
  const { view, perPx, closer, farther, showWhole, hands } = useLayView(lay, box, {
    mayDrag: (key) => key === current && find(key)?.stays !== 'cut',
    onPress: (key) => key !== '' && onPick(key),
    onDrag(key, across, along, letGo) {
      const piece = find(key);
      if (!piece) return;
      const by = movedOnCloth(piece, lay, [along, across]);
      setDrag(letGo ? undefined : { key, by });
      if (letGo) onPut(key, by);
    },
  });
  return (
    <div class="lay-room">
      <section
        class="lay-drawing"
        ref={room}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is moved by key as well as by hand
        tabIndex={0}
        aria-label={label}
        {...hands}
      >
        <svg
          role="img"
          aria-label={label}
          viewBox={[view.x, view.y, view.wide, view.high].join(' ')}
        >
          <Cloth lay={lay} perPx={perPx} />
          {lay.flaws.map((flaw) => (
            <g class="flaw" key={String(flaw)}>
              <title>{words.flaw}</title>
              <polygon points={inDrawing(flaw)} />
            </g>
          ))}
          {lay.pieces.map((piece, i) => (
            <Piece
              key={piece.key}
              {...{ piece, perPx }}
              place={i + 1}
              current={piece.key === current}
              by={drag?.key === piece.key ? drag.by : NOT_MOVED}
            />
          ))}
        </svg>
      </section>
      <div class="lay-zoom">
        <button type="button" aria-label={words.closer} onClick={closer}>
          +
        </button>
        <button type="button" aria-label={words.farther} onClick={farther}>
          −
        </button>
        <button type="button" aria-label={words.whole} onClick={showWhole}>
          ⤢
        </button>
        <button
          type="button"
          class="pdf"
          aria-label={words.paper}
          disabled={!onPaper}
          onClick={onPaper}
        >
          {words.pdf}
        </button>
      </div>
    </div>
  );
}

/** The cut end is on top. */
const inDrawing = (outline: readonly Place[]) => outline.map(([a, c]) => `${c},${a}`).join(' ');

const NOT_MOVED: Place = [0, 0];
/** How high letters are, and about how wide, in px. */
const LETTER = 13;
const WIDE = 7.5;

function Cloth({ lay: { width, length, folded }, perPx }: { lay: LayShown; perPx: number }) {
  const size = LETTER * perPx;
  return (
    <>
      <rect class="cloth" x={0} y={0} width={width} height={length} />
      <line class="edge" x1={0} x2={width} y1={0} y2={0} />
      <line class={folded ? 'edge fold' : 'edge'} x1={0} x2={0} y1={0} y2={length} />
      <line class="edge" x1={width} x2={width} y1={0} y2={length} />
      <g font-size={size}>
        <text x={width / 2} y={-size / 3}>
          {words.cutEnd}
        </text>
        <text transform={`translate(${-size / 3} ${length / 2}) rotate(-90)`}>
          {folded ? words.fold : words.selvedge}
        </text>
      </g>
    </>
  );
}

interface PieceProps {
  piece: PieceShown;
  place: number;
  perPx: number;
  current: boolean;
  by: Place;
}

function Piece({ piece, place, perPx, current, by: [down, right] }: PieceProps) {
  const { along, across } = extentOf(piece);
  const [x, y] = [(across[0] + across[1]) / 2, (along[0] + along[1]) / 2];
  const [wide, high] = [across[1] - across[0], along[1] - along[0]].map((of) => of / perPx);
  const full = words.named(place, piece.name);
  const needs = full.length * WIDE;
  const sideways = needs > (wide ?? 0) && needs <= (high ?? 0);
  const fits = sideways || needs <= (wide ?? 0);
  const styles = ['piece', current && 'current', piece.stays].filter(Boolean).join(' ');
  return (
    <g class={styles} data-piece={piece.key} transform={`translate(${right} ${down})`}>
      <title>{full}</title>
      <polygon points={inDrawing(piece.outline)} />
      <text
        font-size={LETTER * perPx}
        transform={`translate(${x} ${y})${sideways ? ' rotate(-90)' : ''}`}
        dy="0.35em"
      >
        {fits ? full : String(place)}
      </text>
    </g>
  );
}
