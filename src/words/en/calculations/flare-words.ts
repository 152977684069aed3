import { circleQuotes } from '../published/published-circle-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** Flare put into a hem, and what a change of length does to it. */
export const flareWords = {
  title: CALCULATION_NAMES.flare,
  labels: {
    what: 'By',
    sweep: 'Hem as it is, all round',
    upper: 'Upper edge, all round',
    long: 'Length, point to hem',
    by: 'Given',
    slashes: 'Slashes',
    spread: 'Each spread at the hem',
    wanted: 'Hem wanted, all round',
    godets: 'Godets',
    edge: 'Edge of a godet, point to hem',
    opens: 'Opens by',
    angle: 'Angle at its point, °',
    added: 'What one adds to the hem',
    seam: 'Seam of a godet, each side',
    hemMore: 'Hem of a godet, added',
    way: 'It becomes',
    change: 'By',
    pieces: 'Pieces all round',
  },
  edgeToHem: 'Length, upper edge to hem',
  what: { slash: 'Slash, spread', godet: 'Godets', length: 'Another length' },
  by: { spread: 'Spread', wanted: 'Hem wanted' },
  opens: { angle: 'Angle', added: 'Hem added' },
  way: { longer: 'Longer', shorter: 'Shorter' },
  none: 'none',
  about: 'about',
  after: {
    slash: 'hem, all round',
    godet: 'hem, all round',
    length: 'hem, all round, changed there',
  },
  sentence: {
    slash: (spread: string) =>
      `Slash the pattern from the hem to each point, spread each by ${spread}, draw hem and edges smooth.`,
    godet: (added: string, edge: string) =>
      `Each godet adds ${added}. Set it into a slit or a seam left open ${edge} from the hem line; sew from the point down, each side by itself.`,
    length: (kept: string, jog: string) =>
      `Changed at its hem, the hem changes with it. Changed at a line within, it stays ${kept}, and each side edge jogs by ${jog}: draw it anew.`,
  },
  spread: 'Each slash, at the hem',
  angle: 'Angle of each',
  degrees: (angle: string) => `${angle}°`,
  more: 'More hem',
  chord: 'Straight across one at the hem line',
  size: 'Cloth for one, along its middle × across',
  sizeOf: (long: string, wide: string) => `${long} × ${wide}`,
  long: 'Length then',
  jog: 'Jog of each side edge at a line',
  stay: 'Stay the end of each slit before you cut it; stop just short of it.',
  before: 'Change the pattern, not the cloth: what is cut off a hem is gone.',
  hangs: `Let it hang before its hem is levelled: ${quoted(circleQuotes.hang)}.`,
  figure: 'Hem before and after, laid straight; beside it what is put in, or the piece',
  slashCount: (count: number) => `${count} ${count === 1 ? 'slash' : 'slashes'}`,
  godetCount: (count: number) => `${count} ${count === 1 ? 'godet' : 'godets'}`,
  pieceCount: (count: number) => `${count} ${count === 1 ? 'piece' : 'pieces'}`,
  source: 'Geometry, derived here; arcs, not chords.',
  formula: {
    spread: (wanted: string, sweep: string, slashes: number, spread: string) =>
      `(${wanted} − ${sweep}) ÷ ${slashes} = ${spread}. `,
    hem: (sweep: string, count: number, each: string, hem: string) =>
      `${sweep} + ${count} × ${each} = ${hem}. `,
    added: (pi: string, edge: string, angle: string, added: string) =>
      `${pi} × ${edge} × ${angle} ÷ 180 = ${added}. `,
    sweep: (
      sweep: string,
      upper: string,
      long: string,
      change: string,
      sign: string,
      hem: string,
    ) => `${sweep} ${sign} (${sweep} − ${upper}) ÷ ${long} × ${change} = ${hem}. `,
    long: (long: string, sign: string, change: string, then: string) =>
      `${long} ${sign} ${change} = ${then}. `,
  },
};
