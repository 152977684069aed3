import type { LineStyle } from './figure.ts';

/** How a kind of line looks in a file or on paper: its weight and dashes in mm. */
export interface LineLook {
  weight: number;
  /** Drawn and left out in turn; none for a whole line. */
  dash: readonly number[];
  colour: string;
}

/** The same kinds as on the screen, fine enough to cut and mark by. */
export const LINE_LOOKS: Readonly<Record<LineStyle, LineLook>> = {
  cloth: { weight: 0.35, dash: [], colour: '#000' },
  fold: { weight: 0.25, dash: [4, 1.3, 0.7, 1.3], colour: '#000' },
  stitch: { weight: 0.3, dash: [2, 1.4], colour: '#1a3f8a' },
  placement: { weight: 0.25, dash: [], colour: '#1a3f8a' },
  behind: { weight: 0.2, dash: [1, 1.2], colour: '#555' },
  cut: { weight: 0.2, dash: [], colour: '#b00' },
  measure: { weight: 0.15, dash: [], colour: '#777' },
  hole: { weight: 0.2, dash: [], colour: '#000' },
  move: { weight: 0.4, dash: [], colour: '#1a3f8a' },
  clash: { weight: 0.5, dash: [], colour: '#b00' },
};
