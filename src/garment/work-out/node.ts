import type { Reading } from '../../calculation/field-spec.ts';
import type { Kind, Output } from '../../calculation/output.ts';
import type { FieldRead } from '../../calculation/schema.ts';
import type { Begun, Decision } from '../record/record.ts';
import type { KnownBefore, KnownFact } from '../record/sound.ts';
import type { FieldText } from './field-text.ts';
import type { Source } from './links.ts';
import type { Trouble } from './result.ts';

/** A field as a number reads it. */
export interface NodeField {
  key: string;
  text: FieldText;
  read(how: Reading): FieldRead;
  /** What it takes, by letter. */
  sources: readonly Source[];
  /** Where it takes nothing: what was read. */
  value?: unknown;
  /** What is wrong with it, whatever it takes. */
  trouble?: Trouble;
}

interface Base {
  /** Of what stands its home; of what is asked beside something made, that with `ASKED` behind. */
  key: string;
  /** The quantity or the work. */
  id: string;
  side: string;
  kind: Kind;
  /** Keys of the numbers it reads, in order of use. */
  sources: readonly string[];
  /** Its form, and what its result depends on besides: compared with what it was. */
  own: readonly unknown[];
}

/** A number as it is asked for. */
export interface PlanNode extends Base {
  form: 'plan';
  /** None of a quantity, which is the value of its one field. */
  output?: Output;
  plusMinus: number;
  fields: readonly NodeField[];
  /** Outputs of the same work that it takes: their key, and that of the number. */
  takes: readonly (readonly [key: string, from: string])[];
  /** What is made of steps that bend it. */
  bends: readonly { step: string; fact: KnownFact; asked: string }[];
  /** Steps that would bend it, and were made before the app knew: then it is as planned. */
  early: readonly string[];
  begun: Begun | undefined;
  /** Something of it is made, so that this is only what is asked. */
  asked: boolean;
}

/** A single number that is made. */
export interface FactNode extends Base {
  form: 'fact';
  fact: KnownFact;
  /** None of a quantity. */
  output?: Output;
}

/** A step, or a whole row, that was made before the app knew. */
export interface BeforeNode extends Base {
  form: 'before';
  output: Output;
  fact: KnownBefore;
}

/** A row of marks under way, or wholly made. */
export interface RowNode extends Base {
  form: 'row';
  output: Output;
  facts: readonly KnownFact[];
  begun: Begun | undefined;
  decision: Decision | undefined;
}

export type Node = PlanNode | FactNode | BeforeNode | RowNode;

const ASKED = '?asked';

/** The key of what is asked, beside what stands, of a number something is made of. */
export function askedKey(home: string): string {
  return home + ASKED;
}
