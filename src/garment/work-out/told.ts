import type { Fault } from '../../calculation/calculation.ts';
import { type Output, STAGES, type Stage, type Step } from '../../calculation/output.ts';
import type { Sound, Unsound } from '../record/sound.ts';
import { numberOf } from '../record/sound.ts';
import { NOTHING } from '../rows/points.ts';
import { readDigest } from './digest.ts';
import { plusMinus } from './doubt.ts';
import { absence } from './evaluate.ts';
import { askedKey, type FactNode, type Node, type RowNode } from './node.ts';
import type { Result } from './result.ts';
import type { SeenWork } from './seen-work.ts';
import { inWorkOrder } from './step-order.ts';

/** A row, or a single number, that is made otherwise than asked, and nothing answers it. */
export interface Conflict {
  home: string;
  facts: readonly string[];
  /** Of a single number: by how much more there is than asked. */
  over?: number;
  /** A rule of the calculation changed since; `only` where what it read is the same. */
  rule?: 'changed' | 'only';
}

/** A step of the garment, of which a row is one. */
export interface GarmentStep {
  home: string;
  step: Step;
  /** Among the steps of which stage it is made: its own, unless the maker has moved it. */
  stage: Stage;
  /** How much of it is made, of how much; undefined while that isn't known. */
  made: number;
  of: number | undefined;
  /** The maker has passed it over. */
  passed?: true;
  /** Every number it uses has a value, and no decision is open. */
  ready: boolean;
}

/** A work nothing of which can be worked out here. */
export interface WorkTrouble {
  work: string;
  why: 'newer' | 'awaited' | 'missing';
  unknown: readonly Fault[];
}

export interface Told {
  unsound: readonly Unsound[];
  troubles: readonly WorkTrouble[];
  conflicts: readonly Conflict[];
  /** Facts that stand at no number now: of an earlier plan, of what was taken off, of what isn't known here. */
  earlier: readonly { fact: string; home: string }[];
  /** In the order of the work. */
  steps: readonly GarmentStep[];
}

/** What is said of the numbers of one work or quantity. */
export interface BlockTold {
  conflicts: readonly Conflict[];
  /** In the order they are declared. */
  steps: readonly GarmentStep[];
  /** Ids of the facts that stand at a number of it. */
  stands: readonly string[];
}

type Get = (key: string) => Result | undefined;

/** @param its the work they are of, if it is one */
export function toldOf(
  nodes: readonly Node[],
  sound: Sound,
  its: SeenWork | undefined,
  get: Get,
): BlockTold {
  return {
    conflicts: nodes.flatMap((node) => conflictOf(node, sound, its, get)),
    steps: nodes.flatMap((node) => stepOf(node, sound, get)),
    stands: nodes.flatMap((node) => (absence(get(node.key)) ? [] : factsOf(node))),
  };
}

/** What the garment says beside its numbers. */
export function told(
  sound: Sound,
  works: ReadonlyMap<string, SeenWork>,
  blocks: ReadonlyMap<string, { says: BlockTold }>,
): Told {
  const troubles = [...works].flatMap(
    ([work, { work: its, state: why, unknown }]): WorkTrouble[] =>
      its.off || why === 'here' ? [] : [{ work, why, unknown }],
  );
  const all = [...blocks.values()];
  const steps = all.flatMap(({ says }) => says.steps);
  return {
    unsound: sound.unsound,
    troubles,
    conflicts: all.flatMap(({ says }) => says.conflicts),
    earlier: earlierIn(sound, new Set(all.flatMap(({ says }) => says.stands))),
    steps: inTurn(steps, works),
  };
}

/** Steps in the order of the work: as the works come, unless the maker has moved some. */
export function inTurn(
  steps: readonly GarmentStep[],
  works: ReadonlyMap<string, SeenWork>,
): GarmentStep[] {
  if ([...works.values()].some(({ work }) => work.moved ?? work.movedSides))
    return inWorkOrder(steps, works);
  // Works are in order of rank, and their outputs as declared: each stage takes them as they come.
  return STAGES.flatMap((stage) => steps.filter((one) => one.stage === stage));
}

function earlierIn({ facts, before }: Sound, stands: ReadonlySet<string>): Told['earlier'] {
  return [...facts.values(), ...[...before.values()].map((one) => [one])].flatMap((all) =>
    all.flatMap(({ id, fact }) => (stands.has(id) ? [] : [{ fact: id, home: fact.home }])),
  );
}

/** The facts that stand at a number. */
function factsOf(node: Node): string[] {
  if (node.form === 'plan') return [];
  return node.form === 'fact' || node.form === 'before'
    ? [node.fact.id]
    : node.facts.map(({ id }) => id);
}

function conflictOf(node: Node, sound: Sound, its: SeenWork | undefined, get: Get): Conflict[] {
  if (node.form === 'plan' || node.form === 'before' || !node.output) return [];
  const asked = get(askedKey(node.key));
  const found =
    node.form === 'row' ? rowConflict(node, get(node.key)) : numberConflict(node, asked, sound);
  if (!found) return [];
  const facts = node.form === 'row' ? node.facts : [node.fact];
  const rule = its?.outputs?.rule;
  if (facts.every(({ fact }) => fact.rule === rule)) return [found];
  const read = asked?.ok && asked.given ? readDigest(asked.given) : undefined;
  const only = facts.every(({ fact }) => fact.read === read);
  return [{ ...found, rule: only ? 'only' : 'changed' }];
}

function rowConflict({ key }: RowNode, result: Result | undefined): Conflict | undefined {
  const facts = result?.row?.conflict ?? [];
  return facts.length > 0 ? { home: key, facts } : undefined;
}

/** A difference inside its own doubt is none, and one that was answered is none. */
function numberConflict(
  { key, output, fact: { id, fact } }: FactNode,
  asked: Result | undefined,
  { decisions }: Sound,
): Conflict | undefined {
  if (!asked?.ok || typeof asked.value !== 'number') return undefined;
  const decision = decisions.get(key);
  const noted = decision?.way === 'noted' ? decision : undefined;
  const slack = Math.max(fact.tape / 2, plusMinus(asked), noted?.allow ?? 0) + NOTHING;
  const over = numberOf(fact) - asked.value;
  if (Math.abs(over) <= slack || isRounded(over, fact.tape, output)) return undefined;
  const named = noted?.facts.includes(id);
  const holds = typeof noted?.asked === 'number' && Math.abs(noted.asked - asked.value) <= slack;
  return named && holds ? undefined : { home: key, facts: [id], over };
}

/** What may be no less is made up to a graduation over what is asked, what may be no more as much under it. */
function isRounded(over: number, tape: number, output: Output | undefined): boolean {
  const { bound } = output?.step ?? {};
  const past = bound === 'most' ? -over : over;
  return bound !== undefined && past > 0 && past < tape - NOTHING;
}

function stepOf(node: Node, { passed }: Sound, get: Get): GarmentStep[] {
  const output: Output | undefined = node.output;
  if (!output?.step || (node.form === 'plan' && node.asked)) return [];
  const result = get(node.key);
  if (absence(result)) return [];
  const count = countOf(node, result);
  // One that is made without a number is whole, however many marks it has.
  const of = node.form === 'before' ? (count ?? 1) : count;
  const made = node.form === 'before' ? (count ?? 1) : factsOf(node).length;
  const ready = result?.ok === true && !(result.undecided && made !== of);
  const over = passed.has(node.key) && { passed: true as const };
  const { stage } = output.step;
  return [{ home: node.key, step: output.step, stage, made, of, ready, ...over }];
}

function countOf({ kind }: Node, result: Result | undefined): number | undefined {
  if (kind !== 'run') return 1;
  return result?.ok && typeof result.value === 'object' ? result.value.marks.length : undefined;
}
