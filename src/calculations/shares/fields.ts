import { sharesWords as words } from '#words/calculations/shares-words.ts';
import {
  all,
  type Condition,
  choice,
  type FieldSpec,
  given,
  length,
  maybeCount,
  maybeLength,
  number,
} from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import { HIP_TO_WAIST } from '../../sewing/sources/shares.ts';

const what = choice(words.what);
/** Whether a girth is changed, rather than a length. */
export const isGirth = what.is('girth');
const isLength = what.is('length');
const way = choice((ask) => words.way[isLength(ask) ? 'length' : 'girth']);

const usual = HIP_TO_WAIST.value;
const many = (start = '') => maybeCount(words.none, { start, when: isGirth, usual: 'seams' });
const share = (start: string | number, when: Condition) => number({ start: String(start), when });
const where = (count: FieldSpec<unknown>) => all(isGirth, given(count));

const sides = many(String(usual.sides.count));
const frontDarts = many(String(usual.frontDarts.count));
const backDarts = many(String(usual.backDarts.count));
const [frontEdges, backEdges, panelEdges] = [many(), many(), many()];

/** What is asked of a change: what always matters first. */
export const sharesFields = schema(words.labels, {
  change: length({ start: { cm: '8', mm: '80', in: '3' }, usual: 'girthChange' }),
  way,
  what,
  sides,
  sidesShare: share(usual.sides.share, where(sides)),
  frontDarts,
  frontDartsShare: share(usual.frontDarts.share, where(frontDarts)),
  backDarts,
  backDartsShare: share(usual.backDarts.share, where(backDarts)),
  frontEdges,
  frontEdgesShare: share(0, where(frontEdges)),
  backEdges,
  backEdgesShare: share(0, where(backEdges)),
  panelEdges,
  panelEdgesShare: share(0, where(panelEdges)),
  aboveShare: share(50, isLength),
  belowShare: share(50, isLength),
  hemShare: share(0, isLength),
  step: length({ start: { cm: '0.1', mm: '1', in: '1/8' } }),
  allowance: maybeLength(words.notGiven, {
    when: all(isGirth, way.is('out')),
    usual: 'seamAllowance',
  }),
});

/** What was read of the fields. */
export type SharesAsked = InputOf<(typeof sharesFields)['specs']>;
