import { needed } from '../../calculation/needed.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import {
  handOpening,
  type Patch,
  type PocketAt,
  patch,
  pocketAt,
  slashFacing,
} from '../../sewing/bands/pocket.ts';
import {
  mustBePositive,
  mustBePositiveIfGiven,
  mustNotBeNegative,
} from '../../sewing/length-checks.ts';
import { answerUnless, type Outcome } from '../../sewing/problem.ts';
import { type PATCH_FIELDS, type PocketAsked, placeInput } from './fields.ts';

/** A pocket as it was worked out. */
export interface Worked {
  asked: PocketAsked;
  /** Of what lies on a front. */
  at?: PocketAt;
  /** What is cut for it: a patch, or a slash's facing. */
  cut?: Patch;
  /** The least opening for a hand. */
  hand?: ExactLength;
  /** Where it ends, from where it is measured down. */
  end: ExactLength;
}

/** The patch that is asked for. */
export function patchOf(asked: Pick<PocketAsked, (typeof PATCH_FIELDS)[number]>): Outcome<Patch> {
  const { width, deep, hem = ZERO, seam } = asked;
  return patch({ width, hem, ...needed({ deep, seam }) });
}

/** All that is asked of a pocket, or every reason why not. */
export function pocketOf(asked: PocketAsked): Outcome<Worked> {
  const { kind, width, down, slant = ZERO, deep = ZERO, to } = asked;
  const problems = [
    ...mustBePositive('width', width),
    ...mustNotBeNegative('down', down),
    ...mustBePositiveIfGiven('to', to),
  ];
  return answerUnless(problems, () => {
    const hand = handOpening(asked.hand, asked.ease ?? ZERO);
    if (!hand.ok) return hand;
    const needs = hand.value === undefined ? {} : { hand: hand.value };
    if (kind === 'seam') {
      return { ok: true, value: { asked, ...needs, end: exactLength(down + width) } };
    }
    const at = pocketAt(placeInput(asked));
    if (!at.ok) return at;
    const cut =
      kind === 'patch' ? patchOf(asked) : ({ ok: true, value: slashFacing(width) } as const);
    if (!cut.ok) return cut;
    const end = exactLength(down + slant + deep);
    return { ok: true, value: { asked, ...needs, at: at.value, cut: cut.value, end } };
  });
}
