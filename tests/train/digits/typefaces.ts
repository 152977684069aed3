/** A free typeface as the package registry carries it (`@fontsource/…`), and weights of it. */
export interface Typeface {
  readonly name: string;
  readonly licence: 'OFL-1.1';
  readonly weights: readonly number[];
}

const face = (name: string, ...weights: number[]): Typeface => ({
  name,
  licence: 'OFL-1.1',
  weights,
});

/** Digits are learnt from these, and from strokes of our own. */
export const trained: readonly Typeface[] = [
  face('anton', 400),
  face('archivo-narrow', 400, 700),
  face('arimo', 400, 700),
  face('b612-mono', 400, 700),
  face('barlow-condensed', 300, 500, 700),
  face('bebas-neue', 400),
  face('big-shoulders-stencil-display', 400, 700),
  face('comfortaa', 300, 500, 700),
  face('courier-prime', 400, 700),
  face('dosis', 300, 500, 700),
  face('fjalla-one', 400),
  face('josefin-sans', 300, 400, 700),
  face('lato', 300, 400, 700, 900),
  face('libre-baskerville', 400, 700),
  face('montserrat', 300, 500, 700),
  face('oswald', 300, 500, 700),
  face('play', 400, 700),
  face('pt-sans', 400, 700),
  face('quicksand', 300, 500, 700),
  face('rajdhani', 300, 500, 700),
  face('raleway', 300, 500, 700),
  face('roboto-mono', 300, 600),
  face('signika', 300, 500, 700),
  face('stardos-stencil', 400, 700),
  face('tinos', 400, 700),
  face('varela-round', 400),
];

/** How sure a share makes is settled on these: never trained on. */
export const settling: readonly Typeface[] = [
  face('arvo', 400, 700),
  face('jost', 300, 500, 700),
  face('nunito', 300, 500, 700),
  face('philosopher', 400, 700),
  face('saira-condensed', 300, 500, 700),
];

/** Looked at by no one before the figures are taken: neither trained on nor settled on. */
export const keptAside: readonly Typeface[] = [
  face('bitter', 300, 500, 700),
  face('overpass', 300, 500, 700),
  face('rubik', 300, 500, 700),
  face('share-tech-mono', 400),
  face('teko', 300, 500, 700),
  face('work-sans', 300, 500, 700),
];
