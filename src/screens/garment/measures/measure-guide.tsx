import { bodyMeasureWords as words } from '#words/body/body-measure-words.ts';
import { adopt } from '../../../controls/adopt.ts';
import { drawn } from '../../../controls/figure-view.tsx';
import { type BodyFigure, bodyFigure } from '../../../drawing/body-figure.ts';
import { boundsOf } from '../../../drawing/figure.ts';
import {
  BODY_MEASURES,
  type BodyMeasureId,
  TAKEN_AS_READ,
} from '../../../sewing/sources/body-measures.ts';
import css from './measure-guide.css?inline';

adopt(css);

/** How wide and high the drawing may be, in px, and the room round it. */
const BOX = { width: 140, height: 190 };
const ROOM = 4;

/** Where a measure is taken, how, and over what, beside a drawing of it. */
export function MeasureGuide({ id }: { id: BodyMeasureId }) {
  const { where, note } = words.measures[id];
  const { group, over, named } = BODY_MEASURES[id];
  const taken = TAKEN_AS_READ.has(id) ? words.takenAsRead : words.takenFromMemory;
  return (
    <div class="guide">
      <Body figure={bodyFigure(id)} name={words.drawing(where)} />
      <div>
        <p>{where}</p>
        {note && <p>{note}</p>}
        <p>
          {words.how[group]} {words.over[over]}
        </p>
        <p class="from">{words.from(words.named[named], taken)}</p>
      </div>
    </div>
  );
}

function Body({ figure: { body, level, tape }, name }: { figure: BodyFigure; name: string }) {
  const all = [...body, ...level, ...tape];
  const { x, y, width, height } = boundsOf(all);
  const scale = Math.min((BOX.width - 2 * ROOM) / width, (BOX.height - 2 * ROOM) / height);
  const place = (point: { x: number; y: number }) => ({
    x: (point.x - x) * scale + ROOM,
    y: (point.y - y) * scale + ROOM,
  });
  const box = `0 0 ${width * scale + 2 * ROOM} ${height * scale + 2 * ROOM}`;
  return (
    <figure class="drawing body">
      <svg role="img" aria-label={name} viewBox={box}>
        {all.map((shape) => drawn(shape, place))}
      </svg>
    </figure>
  );
}
