import { type Outcome, type Problem, refused } from '../../sewing/problem.ts';
import {
  type Room,
  roomAtHip,
  type Vent,
  type VentInput,
  ventFrom,
} from '../../sewing/wearer/vent.ts';

/** The room at the hip, and its vent: none where the garment is too narrow where it is known last. */
export interface Worked {
  room: Room;
  vent: Vent | undefined;
}

/** Too narrow is an answer, too: it is said, and nothing else is refused for it. */
export function ventOf(input: VentInput): Outcome<Worked> {
  const room = roomAtHip(input);
  const vent = ventFrom(input);
  if (room.ok && vent.ok) return { ok: true, value: { room: room.value, vent: vent.value } };
  const [first, ...more] = (vent.ok ? [] : vent.problems).filter(isWrong);
  if (first) return refused(first, ...more);
  return room.ok ? { ok: true, value: { room: room.value, vent: undefined } } : room;
}

function isWrong({ kind }: Problem): boolean {
  return kind !== 'does-not-fit';
}
