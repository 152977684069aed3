import type { FieldSpec } from '../../calculation/field-spec.ts';
import { LONGEST } from '../../lengths/length.ts';
import { readLength } from '../../lengths/read-length.ts';
import { benchUnit } from '../../lengths/unit.ts';
import type { Typed } from '../record/from-second.ts';
import { type Limit, MOST_ROW } from '../record/limits.ts';
import type { Fact, Garment, Parts, Quantity, Work } from '../record/record.ts';
import { isRun } from '../record/sound-values.ts';
import { type FieldText, fieldText } from '../work-out/field-text.ts';
import { QUANTITY_SPECS } from '../work-out/quantity-node.ts';
import type { Known } from '../work-out/seen-work.ts';
import type { State } from './state.ts';
import type { FieldPlace } from './typing.ts';

/** What a field would have too much of with these parts; undefined where it is within the limits. */
export function tooMuchIn(state: State, place: FieldPlace, parts: Parts): Limit | undefined {
  return tooMuch(parts, specOf(state, place));
}

/** The same of a length for itself, in 1/8000 mm. */
export function tooLong(...lengths: readonly (number | undefined)[]): Limit | undefined {
  return lengths.some((one) => one !== undefined && Math.abs(one) > LONGEST) ? 'length' : undefined;
}

/** The same of what was measured on a page: too far away it is no place, and would be kept as it was said. */
export function tooFar({ runs, draft }: Pick<Typed, 'runs' | 'draft'>): 'length' | undefined {
  const unit = benchUnit(draft.u) ?? 'cm';
  const isTooFar = (typed: string) => {
    const read = readLength(typed, unit);
    return !read.ok && read.fault.kind === 'too-long';
  };
  return runs.some(({ made }) => Object.values(made).some(isTooFar)) ? 'length' : undefined;
}

/** The same of what a new quantity is to hold. */
function tooMuch(parts: Parts, spec: FieldSpec<unknown> | undefined): Limit | undefined {
  const text = fieldText(parts);
  if (text.trouble === 'too many links') return 'links';
  // What is taken isn't read here: it has its own limits, where it is worked out.
  return spec && tooMuchTyped(text, spec);
}

/** The same of what is kept as a whole: each field of works and quantities, and what is made of them. */
export function tooMuchKept(
  { works, quantities, facts }: Pick<Garment, 'works' | 'quantities' | 'facts'>,
  known: Known,
): Limit | undefined {
  const lengths = Object.values(facts).flatMap((fact) => {
    const { shown, measured } = fact as Partial<Fact>;
    return [shown, measured];
  });
  return (
    tooLong(...lengths) ??
    firstOf(Object.values(works), (work) => tooMuchOfWork(work as Work, known)) ??
    firstOf(Object.values(quantities), (one) => {
      const { kind, parts } = one as Quantity;
      return tooMuch(parts, QUANTITY_SPECS[kind]);
    })
  );
}

function tooMuchOfWork({ calculation, fields }: Work, known: Known): Limit | undefined {
  const gives = known.get(calculation);
  const specs: Readonly<Record<string, FieldSpec<unknown>>> =
    typeof gives === 'object' ? gives.fields.specs : {};
  return firstOf(Object.entries(fields), ([key, parts]) =>
    tooMuch(parts, Object.hasOwn(specs, key) ? specs[key] : undefined),
  );
}

function firstOf<One>(
  all: readonly One[],
  limitOf: (one: One) => Limit | undefined,
): Limit | undefined {
  for (const one of all) {
    const limit = limitOf(one);
    if (limit) return limit;
  }
  return undefined;
}

function tooMuchTyped({ text, how }: FieldText, spec: FieldSpec<unknown>): Limit | undefined {
  const isLength = spec.kind === 'length' || spec.kind === 'lengths';
  const read = isLength ? spec.read(text, how) : undefined;
  if (!read) return undefined;
  if (!read.ok) return read.fault.kind === 'too-long' ? 'length' : undefined;
  const { value } = read;
  const marks = isRun(value) ? value.marks.length : Array.isArray(value) ? value.length : 0;
  // A run of more is no run that can be read again.
  const isLonger = spec.takesRun === true && !isRun(value);
  return isLonger || marks > MOST_ROW ? 'row' : undefined;
}

function specOf({ answer }: State, place: FieldPlace): FieldSpec<unknown> | undefined {
  if ('quantity' in place) {
    const kind = answer.sound.quantities.get(place.quantity)?.kind;
    return kind && QUANTITY_SPECS[kind];
  }
  const gives = answer.works.get(place.work)?.gives;
  const specs = typeof gives === 'object' ? gives.fields.specs : {};
  return Object.hasOwn(specs, place.field) ? specs[place.field] : undefined;
}
