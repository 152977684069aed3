import { exactLength, type Length, ZERO } from '../../lengths/length.ts';
import {
  mustBeCount,
  mustBePositive,
  mustBePositiveIfGiven,
  mustNotBeNegative,
} from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import {
  type ClosuresInput,
  keptPitch,
  MOST_CLOSURES,
  pitchField,
  type SpacingRule,
  wholeRow,
} from './closure-input.ts';
import { lengthOf } from './segment.ts';

/** Everything wrong with an opening to be closed, field by field and then between fields. */
export function closureProblems(input: ClosuresInput): Problem[] {
  const alone = [
    ...mustBePositive('opening', input.opening),
    ...(input.ends === 'given'
      ? [...mustNotBeNegative('top', input.top), ...mustNotBeNegative('bottom', input.bottom)]
      : []),
    ...ruleProblems(input.rule),
    ...(input.rule.by === 'gap' ? [] : mustBePositiveIfGiven('width', input.width)),
  ];
  if (alone.length > 0) return alone;
  const room = roomProblems(input);
  return room.length > 0 ? room : [...levelProblems(input), ...sewnProblems(input)];
}

function ruleProblems(rule: SpacingRule): Problem[] {
  switch (rule.by) {
    case 'count':
      return mustBeCount('count', rule.count, 1, MOST_CLOSURES);
    case 'widest':
    case 'exact':
      return mustBePositive('pitch', rule.pitch);
    case 'gap':
      return [...mustNotBeNegative('gap', rule.gap), ...mustBePositive('width', rule.width)];
  }
}

/** Is there room between first and last for what is asked? */
function roomProblems(input: ClosuresInput): Problem[] {
  const { opening, rule, sewn = [] } = input;
  const row = wholeRow(input);
  const room = lengthOf(row);
  const several = rule.by === 'count' && rule.count > 1 && sewn.length === 0;
  if (room < 0 || (room === 0 && several)) {
    return [endsTooLong(opening, exactLength(opening - room))];
  }
  const pitch = keptPitch(rule);
  if (pitch === undefined || sewn.length > 0 || row.head * pitch <= room) return [];
  return [
    {
      kind: 'does-not-fit',
      field: pitchField(rule),
      room: opening,
      needed: exactLength(row.head * pitch),
    },
  ];
}

/** First and last together leave nothing between them. */
export function endsTooLong(room: Length, needed: number): Problem {
  return { kind: 'ends-too-long', field: 'bottom', room, needed: exactLength(needed) };
}

/** A level lies from first to last; where the ends are shares of a space, clear of the edges. */
function levelProblems(input: ClosuresInput): Problem[] {
  const field = 'level';
  const { level: given, opening, ends, rule, sewn = [] } = input;
  if (given === undefined) return [];
  const row = wholeRow(input);
  const pitch = sewn.length > 0 ? undefined : keptPitch(rule);
  if (ends !== 'given' && pitch === undefined) {
    if (given <= ZERO) return [{ kind: 'not-over', field, over: ZERO, given }];
    return given >= opening ? [{ kind: 'not-under', field, under: opening, given }] : [];
  }
  const share = (row.head * (pitch ?? 0)) / 2;
  const least = exactLength(row.from + share);
  const most = exactLength(row.to - share);
  if (given >= least && given <= most) return [];
  return [{ kind: 'outside', field, given, least, most }];
}

function sewnProblems({ opening, rule, sewn = [] }: ClosuresInput): Problem[] {
  const field = 'sewn';
  const outside = sewn
    .filter((at) => at < 0 || at > opening)
    .map((given): Problem => ({ kind: 'outside', field, given, least: ZERO, most: opening }));
  const twice = repeated(sewn).map((given): Problem => ({ kind: 'twice', field, given }));
  const given = sewn.length;
  const many: Problem[] =
    given > MOST_CLOSURES ? [{ kind: 'too-many', field, most: MOST_CLOSURES, given }] : [];
  const over: Problem[] =
    rule.by === 'count' && rule.count < given
      ? [{ kind: 'fewer-than-sewn', field: 'count', sewn: given, given: rule.count }]
      : [];
  return [...outside, ...twice, ...many, ...over];
}

/** Each value that occurs more than once, once. */
function repeated(sewn: readonly Length[]): Length[] {
  const seen = new Set<Length>();
  return [...new Set(sewn.filter((at) => seen.size === seen.add(at).size))];
}
