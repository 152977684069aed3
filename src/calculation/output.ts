import type { ExactLength } from '../lengths/length.ts';
import type { Outcome } from '../sewing/problem.ts';
import type { Datum, Run } from '../sewing/run.ts';
import type { Fault } from './calculation.ts';
import type { Ask, Condition, FieldSpec } from './field-spec.ts';
import type { MaterialTaken } from './material.ts';
import type { InputOf, Schema } from './schema.ts';

/** When in the making of a garment something is done, in this order. */
export const STAGES = ['measure', 'cut', 'join', 'turn-up', 'close', 'edge'] as const;
export type Stage = (typeof STAGES)[number];

/** What kind of number an output is: lengths are in 1/8000 mm. */
export interface Values {
  length: ExactLength;
  count: number;
  number: number;
  run: Run;
}
export type Kind = keyof Values;

/** Where the tape's zero is held for a step: as on a run, or on what was made before. */
export type StepDatum =
  | Datum
  | 'stitch-line'
  | 'first-row'
  | 'fold'
  | 'centre-line'
  | 'buttons-zero'
  | 'both-begin';

/** One thing the hand does. It makes exactly one output, whose key it has; of a run, each mark. */
export interface Step {
  /** What is done: "Press", "Sew the hook". */
  do: string;
  /** Where the tape's zero is held; `done` where nothing is measured, as for a count. */
  datum: StepDatum | 'done';
  stage: Stage;
  /** Whether it can be undone: a press and a seam can, a cut, a punch and a trim can't. */
  undoable: boolean;
  /**
   * Where its length lies between two graduations: of what may be no less the one above is taken, of
   * what may be no more the one below, else the nearest. Its page shows the same.
   */
  bound?: 'least' | 'most';
  /** What can hurt someone at this step. */
  caution?: string;
}

/** What was made of earlier steps of the same work, by key. */
export type MadeSteps = Readonly<Record<string, ExactLength>>;

/** What an output is worked out from: what it names, and nothing else. */
export interface Given {
  /** What was read of the fields it reads, by key. */
  fields: Readonly<Record<string, unknown>>;
  /** What outputs of the same work that it takes came to, by key. */
  takes: Readonly<Record<string, Values[Kind]>>;
  made: MadeSteps;
  /** Of a run that was begun: how many marks it keeps. */
  count?: number | undefined;
}

/** What an output comes to that the number in a field takes away, as a turn of nothing does its press. */
export interface TakenAway {
  ok: false;
  /** That field. */
  absent: string;
}

/** What could not be read of a field that is read further where it is worked out, as steps are. */
export interface Unread {
  ok: false;
  faults: readonly Fault[];
}

/** What an output comes to: a value, why there is none, or that there is nothing to be had. */
export type Comes<Value> = Outcome<Value> | TakenAway | Unread;

/** A named number that a calculation gives. Its key never changes meaning. */
export interface Output {
  key: string;
  name: string;
  kind: Kind;
  /** The fields it reads, and no other changes it. One that isn't asked for is read as nothing. */
  reads: readonly string[];
  /** Those of them that it reads for what is chosen: the others stand for nothing there. */
  readsNow(ask: Ask): readonly string[];
  /** Outputs of the same work, declared before it, that it takes. One that is absent is left out; without any it is absent, too. */
  takes: readonly string[];
  /** Earlier steps of the same work that bend it once they are made. */
  bentBy: readonly string[];
  /** What the hand does to make it. */
  step?: Step;
  /** What no step makes and may be no less, or no more: it is rounded to that side, as a step is. */
  bound?: NonNullable<Step['bound']>;
  /** What the edge of a piece takes for this work: its allowance. */
  edge?: true;
  /** Whether several of it add up: left and right, or one of each size. */
  adds: boolean;
  /** What it takes of a material. */
  material?: MaterialTaken;
  /** Of a run under way: the fields that decide how many it has and how they fit. */
  decides: readonly string[];
  /** The field that takes it away by what is chosen there; undefined where it is there. */
  absent(ask: Ask): string | undefined;
  /** What it comes to; the reasons name fields of the calculation. Never reads words, bench or clock. */
  of(given: Given): Comes<Values[Kind]>;
}

/** What a calculation gives to a garment, apart from how it is shown. */
export interface Outputs {
  id: string;
  /** Raised when a rule of its arithmetic changes, so that what was made before can be told. */
  rule: number;
  fields: Schema<Readonly<Record<string, FieldSpec<unknown>>>>;
  outputs: readonly Output[];
}

type Specs = Readonly<Record<string, FieldSpec<unknown>>>;

interface Declared<All extends Specs, Key extends keyof All & string, K extends Kind> {
  key: string;
  name: string;
  kind: K;
  reads: readonly Key[];
  /** Of some fields: only then they are read, else they are left out. */
  readsIf?: { readonly [Field in Key]?: Condition };
  takes?: readonly Output[];
  bentBy?: readonly Output[];
  step?: Step;
  bound?: NonNullable<Step['bound']>;
  edge?: true;
  adds?: true;
  material?: MaterialTaken;
  decides?: readonly Key[];
  /** Only there while all this holds: the first that doesn't takes it away. */
  when?: When<All> | readonly When<All>[];
  of(fields: Pick<InputOf<All>, Key>, more: Omit<Given, 'fields'>): Comes<Values[K]>;
}

/** What has to hold, and the field in which something else is chosen where it doesn't. */
interface When<All extends Specs> {
  field: keyof All & string;
  is(ask: Ask): boolean;
}

/** Declares outputs of the fields of one calculation: a field that isn't one of them, or isn't read, doesn't compile. */
export function outputOf<All extends Specs>(_fields: Schema<All>) {
  return <Key extends keyof All & string, K extends Kind>(
    declared: Declared<All, Key, K>,
  ): Output => {
    const { key, name, kind, reads, takes = [], bentBy = [], adds = false } = declared;
    const { step, bound, edge, material } = declared;
    const readsIf: Readonly<Record<string, Condition | undefined>> = declared.readsIf ?? {};
    const when = [declared.when ?? []].flat();
    return {
      key,
      name,
      kind,
      reads,
      readsNow: (ask) => reads.filter((field) => readsIf[field]?.(ask) ?? true),
      takes: takes.map((one) => one.key),
      bentBy: bentBy.map((one) => one.key),
      ...(step && { step }),
      ...(bound && { bound }),
      ...(edge && { edge }),
      adds,
      ...(material && { material }),
      decides: declared.decides ?? [],
      absent: (ask) => when.find(({ is }) => !is(ask))?.field,
      of: ({ fields, ...more }) => declared.of(fields as Pick<InputOf<All>, Key>, more),
    };
  };
}

/**
 * The run that was taken from an output.
 *
 * @throws an Error where it takes none of that key
 */
export function runTaken(takes: Given['takes'], { key }: Output): Run {
  const run = takes[key];
  if (typeof run !== 'object') throw new Error(`no run was taken from ${key}`);
  return run;
}

/** The runs that were taken of some outputs: those that are there. */
export function runsTaken(takes: Given['takes'], outputs: readonly Output[]): Run[] {
  return outputs.filter(({ key }) => Object.hasOwn(takes, key)).map((one) => runTaken(takes, one));
}

/** All that was taken together, of counts or of lengths. */
export function sumTaken(takes: Given['takes']): number {
  return Object.values(takes).reduce<number>((sum, one) => sum + Number(one), 0);
}
