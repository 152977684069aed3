import type { Random } from '../../tapes/random.ts';
import type { Lettered } from './letter-masks.ts';
import { type Ink, maskInk, type Print, strokeInk } from './print.ts';

/** A digit as it may stand on a tape: between others, beside or over a line, cut at an edge. */
export function digitPrint(digit: number, letter: Lettered, random: Random): Print {
  const mask = letter(String(digit));
  const half = mask.width / mask.height / 2;
  const others: Ink[] = [];
  if (random.chance(0.5)) {
    for (const side of [-1, 1]) {
      if (random.chance(0.4)) continue;
      const next = letter(String(random.whole(0, 9)));
      const away = half + next.width / next.height / 2 + random.between(0.07, 0.3);
      others.push(maskInk(next, side * away, random.between(-0.03, 0.03), 1));
    }
  }
  if (random.chance(0.25)) others.push(lineBeside(half, random));
  const whole = maskInk(mask, 0, 0, 1);
  return { own: random.chance(0.1) ? cutInk(whole, half, random) : whole, others };
}

/** A digit in proportions of no typeface: wider or narrower, its waist higher or lower. */
export function variedPrint(digit: number, letter: Lettered, random: Random): Print {
  const stretch = random.between(0.8, 1.25);
  const waist = random.between(-0.2, 0.2);
  const varied = (ink: Ink): Ink => {
    return (x, y) => ink(x / stretch, y + waist * (0.25 - y * y));
  };
  const { own, others } = digitPrint(digit, letter, random);
  return { own: varied(own), others: others.map(varied) };
}

/** A line along or under a digit that all but touches it, or runs into its edge. */
function lineBeside(half: number, random: Random): Ink {
  const thick = random.between(0.03, 0.13);
  const gap = random.between(-0.03, 0.1) + thick / 2;
  const side = random.chance(0.5) ? -1 : 1;
  if (random.chance(0.5)) {
    const y = side * (0.5 + gap);
    return strokeInk([random.between(-2, -half), y], [random.between(half, 2), y], thick);
  }
  const x = side * (half + gap);
  const [top, bottom] = [random.between(-2, -0.3), random.between(0.7, 2)];
  return random.chance(0.5)
    ? strokeInk([x, top], [x, bottom], thick)
    : strokeInk([x, -bottom], [x, -top], thick);
}

/** Up to an eighteenth is missing at one side, as where a picture or a tape ends. */
function cutInk(whole: Ink, half: number, random: Random): Ink {
  const share = random.between(0.015, 0.055);
  const side = random.whole(0, 3);
  const [x, y] = [half * (1 - 2 * share), 0.5 - share];
  return (atX, atY) => {
    const gone = [atX < -x, atX > x, atY < -y, atY > y][side];
    return gone ? 0 : whole(atX, atY);
  };
}
