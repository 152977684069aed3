import type { Camera } from './camera.ts';
import type { Hider } from './hider.ts';
import type { Random } from './random.ts';
import { mmOf } from './scale-spec.ts';
import type { BesidePlace } from './scene-types.ts';
import type { TapeBody } from './tape-body.ts';
import { EDGE_PX, HIDDEN_MM, within } from './truth.ts';

/** Tried on each tape; most of a long one lies outside the picture. */
const TRIES = 60;
const MOST = 8;
/** Cloth to both sides of a tape is measured too, up to here. */
const BESIDE_MM = 5;

/** Places anywhere across the tapes and on the ground close by, with all that their scales say there. */
export function placesBeside(
  bodies: readonly TapeBody[],
  camera: Camera,
  hiders: readonly Hider[],
  random: Random,
): BesidePlace[] {
  return bodies.flatMap((body) => {
    const places: BesidePlace[] = [];
    for (let i = 0; i < TRIES && places.length < MOST; i++) {
      const place = somewhere(body, bodies, camera, hiders, random);
      if (place) places.push(place);
    }
    return places;
  });
}

function somewhere(
  body: TapeBody,
  bodies: readonly TapeBody[],
  camera: Camera,
  hiders: readonly Hider[],
  random: Random,
): BesidePlace | undefined {
  const { spec } = body;
  const { scales, room } = printOf(body);
  const s = random.between(spec.from, spec.to);
  const across = random.between(-room, spec.width + room);
  const { x, y } = body.see(s, across);
  if (!within(camera, { x, y }, EDGE_PX)) return undefined;
  const at = camera.meet(x, y);
  const onAnother = bodies.some((one) => one !== body && isBy(one, at, room));
  if (onAnother || hiders.some(({ away }) => away(at[0], at[1]) < HIDDEN_MM)) return undefined;
  const says = scales.flatMap(({ unit, direction, zero, first, last }) => {
    if (unit === 'foot') return [];
    const mm = direction * (s - zero);
    return mm >= first * mmOf[unit] && mm <= last * mmOf[unit] ? [mm] : [];
  });
  return { x, y, says };
}

/**
 * What a tape says, and how far beside it that is asked about: what isn't expected to be read may be, but not
 * wrongly, and where turns of a tape lie side by side only on the tape itself.
 */
function printOf({ spec: { scales, unread = [] } }: TapeBody) {
  return scales.length > 0 ? { scales, room: BESIDE_MM } : { scales: unread, room: 0 };
}

/** Whether a place is on a tape or close beside it. */
function isBy(
  { spec, placeAt }: TapeBody,
  [x, y]: readonly [number, number],
  room: number,
): boolean {
  const [s, across] = placeAt(x, y);
  const inside = Math.min(s - spec.from, spec.to - s, across, spec.width - across);
  return inside > -room - HIDDEN_MM;
}
