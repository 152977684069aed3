import type { SKRSContext2D } from '@napi-rs/canvas';
import type { Random } from '../../tapes/random.ts';

/** Proportions of one way to draw the ten digits with a pen. Lengths in heights of a digit. */
export interface OwnForms {
  readonly wide: number;
  /** Where the upper bowls of 3 and 8 end, from the top. */
  readonly waist: number;
  /** The bowls of 5, 6 and 9, from their own foot. */
  readonly bowl: number;
  readonly zero: 'round' | 'straight' | 'slashed' | 'dotted';
  readonly one: 'bare' | 'flagged' | 'footed' | 'long-flagged';
  readonly two: 'straight' | 'swung';
  readonly three: 'round' | 'flat';
  readonly four: 'closed' | 'open' | 'short';
  readonly five: 'upright' | 'slanted';
  readonly six: 'curled' | 'straight';
  readonly seven: 'straight' | 'bent' | 'barred' | 'hooked';
  /** How far open ends of bowls reach round, in quarters of a turn less than shut. */
  readonly opening: number;
}

export function ownForms(random: Random): OwnForms {
  return {
    wide: random.between(0.42, 0.75),
    waist: random.between(0.42, 0.52),
    bowl: random.between(0.54, 0.68),
    zero: random.pick(['round', 'round', 'straight', 'straight', 'slashed', 'dotted']),
    one: random.pick(['bare', 'flagged', 'flagged', 'footed', 'footed', 'long-flagged']),
    two: random.pick(['straight', 'swung']),
    three: random.pick(['round', 'round', 'flat']),
    four: random.pick(['closed', 'closed', 'open', 'short']),
    five: random.pick(['upright', 'slanted']),
    six: random.pick(['curled', 'straight']),
    seven: random.pick(['straight', 'straight', 'bent', 'barred', 'hooked']),
    opening: random.between(0.1, 0.9),
  };
}

/** Lays the path of a digit in a box `wide` × 1 with its upper left corner at 0, 0. */
export function traceDigit(pen: SKRSContext2D, digit: string, forms: OwnForms): void {
  const { wide: w, waist, bowl, opening } = forms;
  const start = Math.PI * (1 + 0.35 * opening);
  const end = Math.PI * (1 - 0.35 * opening);
  const oval = (x: number, y: number, rx: number, ry: number, from = 0, to = 2 * Math.PI) =>
    pen.ellipse(x, y, rx, ry, 0, from, to);
  const line = (...points: number[]) => {
    for (let i = 0; i < points.length; i += 2) {
      const [x, y] = [points[i] as number, points[i + 1] as number];
      if (i === 0) pen.moveTo(x, y);
      else pen.lineTo(x, y);
    }
  };
  const draw: Record<string, () => void> = {
    '0': () => {
      if (forms.zero === 'straight') {
        pen.roundRect(0, 0, w, 1, w * 0.48);
      } else oval(w / 2, 0.5, w / 2, 0.5);
      if (forms.zero === 'slashed') line(0.25 * w, 0.72, 0.75 * w, 0.28);
      if (forms.zero === 'dotted') line(0.5 * w, 0.46, 0.5 * w, 0.54);
    },
    '1': () => {
      const reach = { bare: 0, flagged: 0.5, footed: 0.45, 'long-flagged': 0.8 }[forms.one] * w;
      const fall = forms.one === 'long-flagged' ? 0.42 : 0.2;
      if (reach > 0) line(0, fall, reach, 0, reach, 1);
      else line(0, 0, 0, 1);
      if (forms.one === 'footed') line(0, 1, 2 * reach, 1);
    },
    '2': () => {
      const r = w / 2;
      oval(r, r * 0.95, r, r * 0.95, start, 2 * Math.PI + 0.45);
      if (forms.two === 'swung') pen.bezierCurveTo(0.85 * w, 0.62, 0.05 * w, 0.7, 0, 1);
      else pen.lineTo(0, 1);
      pen.lineTo(w, 1);
    },
    '3': () => {
      if (forms.three === 'flat') line(0.03 * w, 0, 0.95 * w, 0, 0.42 * w, 0.4);
      else {
        oval(0.47 * w, waist / 2, 0.45 * w, waist / 2, start, 2.5 * Math.PI);
        line(0.3 * w, waist, 0.47 * w, waist);
      }
      const top = forms.three === 'flat' ? 0.4 : waist;
      const half = (1 - top) / 2;
      const from = forms.three === 'flat' ? -0.6 * Math.PI : -0.5 * Math.PI;
      pen.moveTo(0.47 * w + 0.53 * w * Math.cos(from), top + half + half * Math.sin(from));
      oval(0.47 * w, top + half, 0.53 * w, half, from, end);
    },
    '4': () => {
      const [stem, foot] = [0.74 * w, 0.7];
      if (forms.four === 'closed') line(stem, 1, stem, 0, 0, foot, w, foot);
      if (forms.four === 'open') {
        line(0.3 * w, 0, 0, foot, w, foot);
        line(stem, 0.35, stem, 1);
      }
      if (forms.four === 'short') line(stem, 1, stem, 0, stem - 0.08, 0, 0, foot, stem + 0.1, foot);
    },
    '5': () => {
      const lean = forms.five === 'slanted' ? 0.12 * w : 0;
      const [ry, x] = [bowl / 2, 0.47 * w];
      const from = -0.78 * Math.PI;
      line(0.92 * w, 0, lean, 0, 0.02 * w, 1 - ry + ry * Math.sin(from) * 0.95);
      oval(x, 1 - ry, 0.53 * w, ry, from, end);
    },
    '6': () => sixOn(pen, forms),
    '7': () => {
      const tip = 0.3 * w;
      if (forms.seven === 'hooked') line(0, 0.14, 0, 0, w, 0, tip, 1);
      else if (forms.seven === 'bent') {
        line(0, 0, w, 0);
        pen.bezierCurveTo(0.6 * w, 0.3, 0.4 * w, 0.6, tip, 1);
      } else line(0, 0, w, 0, tip, 1);
      if (forms.seven === 'barred') line(0.35 * w, 0.5, 0.9 * w, 0.5);
    },
    '8': () => {
      oval(w / 2, waist / 2, 0.45 * w, waist / 2);
      pen.moveTo(w, (1 + waist) / 2);
      oval(w / 2, (1 + waist) / 2, w / 2, (1 - waist) / 2);
    },
    '9': () => {
      pen.translate(w, 1);
      pen.rotate(Math.PI);
      sixOn(pen, forms);
    },
  };
  draw[digit]?.();
}

function sixOn(pen: SKRSContext2D, { wide: w, bowl, six, opening }: OwnForms): void {
  pen.ellipse(w / 2, 1 - bowl / 2, w / 2, bowl / 2, 0, 0, 2 * Math.PI);
  if (six === 'straight') {
    pen.moveTo(0.08 * w, 1 - 0.68 * bowl);
    pen.quadraticCurveTo(0.2 * w, 0.4, 0.62 * w, 0);
    return;
  }
  pen.moveTo(0, 1 - bowl / 2);
  pen.lineTo(0, 0.45);
  pen.ellipse(w / 2, 0.45, w / 2, 0.45, 0, Math.PI, Math.PI * (1.55 + 0.3 * (1 - opening)));
}
