import type { Output, Outputs } from '../../calculation/output.ts';
import { homeOf } from '../record/home.ts';
import type { Work } from '../record/record.ts';
import type { KnownFact, Sound } from '../record/sound.ts';
import { isObject } from '../record/sound-values.ts';
import { type FieldText, NO_TEXT } from './field-text.ts';
import type { Places } from './links.ts';
import { askedKey, type Node, type NodeField, type PlanNode } from './node.ts';
import { nodeField } from './node-field.ts';
import { ownOf } from './quantity-node.ts';
import { absentBy, type SeenSide, type SeenWork } from './seen-work.ts';

/** What is made and decided, by home. */
export type MadeOf = Pick<Sound, 'facts' | 'before' | 'begun' | 'decisions'>;

const NONE: readonly KnownFact[] = [];

/** All numbers of one work: of each side each output that its options leave. */
export function workNodes(id: string, seen: SeenWork, made: MadeOf, places: Places): Node[] {
  const { outputs, sides, work } = seen;
  if (!outputs || work.off) return [];
  return sides.flatMap((side) => {
    const fields = new Map<string, NodeField>();
    return outputs.outputs
      .filter(({ key }) => absentBy(seen, side, key) === undefined)
      .flatMap((one) => outputNodes(one, { id, seen, outputs, side, fields, made, places }));
  });
}

interface Site {
  id: string;
  seen: SeenWork;
  outputs: Outputs;
  side: SeenSide;
  /** Of this side, as numbers before read them. */
  fields: Map<string, NodeField>;
  made: MadeOf;
  places: Places;
}

function outputNodes(output: Output, site: Site): Node[] {
  const { id, side, made } = site;
  const home = homeOf(id, side.side, output.key);
  const facts = output.step ? factsOf(output.kind === 'run', made.facts.get(home)) : NONE;
  const before = output.step && facts.length === 0 ? made.before.get(home) : undefined;
  const begun = facts.length > 0 ? made.begun.get(home) : undefined;
  const isMade = facts.length > 0 || before !== undefined;
  const plan = planNode(output, site, isMade ? askedKey(home) : home, begun);
  if (!isMade) return [plan];
  const base = { key: home, id, side: side.side, kind: output.kind, output };
  if (before) {
    const own = ['before', before.id, before.fact, output];
    return [plan, { ...base, form: 'before', fact: before, sources: [plan.key], own }];
  }
  const fact = facts.at(-1) as KnownFact;
  if (output.kind !== 'run') {
    return [
      plan,
      {
        ...base,
        form: 'fact',
        fact,
        sources: [plan.key],
        own: ['fact', fact.id, fact.fact, output],
      },
    ];
  }
  const decision = made.decisions.get(home);
  const known = facts.flatMap((one) => [one.id, one.fact]);
  const own = ['row', output, begun, decision, ...known];
  const row = { ...base, form: 'row', output, facts, begun, decision, own } as const;
  return [plan, { ...row, sources: [plan.key] }];
}

/** A row's facts are of marks, a single number's are not; those of the other kind aren't of it. */
function factsOf(row: boolean, facts = NONE): readonly KnownFact[] {
  return facts.filter(({ fact }) => (fact.mark !== undefined) === row);
}

function planNode(output: Output, site: Site, key: string, begun: PlanNode['begun']): PlanNode {
  const { id, seen, side, made } = site;
  const fields = output.readsNow(side.ask).map((name) => fieldOnce(name, site));
  const takes = output.takes.flatMap((taken) =>
    absentBy(seen, side, taken) === undefined
      ? [[taken, homeOf(id, side.side, taken)] as const]
      : [],
  );
  const bends = output.bentBy.flatMap((step) => {
    const home = homeOf(id, side.side, step);
    // What bends is a single number.
    const fact = factsOf(false, made.facts.get(home)).at(-1);
    const stands = fact && absentBy(seen, side, step) === undefined;
    return stands ? [{ step, fact, asked: askedKey(home) }] : [];
  });
  const early = output.bentBy.flatMap((step) => {
    const home = homeOf(id, side.side, step);
    return made.before.has(home) && absentBy(seen, side, step) === undefined ? [home] : [];
  });
  const own = [
    'plan',
    output,
    begun,
    early,
    ...fields.map(ownOf),
    ...bends.flatMap(({ step, fact }) => [step, fact.id, fact.fact]),
  ];
  const troubled = fields.some(({ trouble }) => trouble);
  const linked = fields.flatMap((field) => field.sources.flatMap(({ keys }) => keys));
  const within = [...takes.map(([, from]) => from), ...bends.map((bend) => bend.asked), ...early];
  const sources = troubled ? [] : [...linked, ...within];
  const asked = key !== homeOf(id, side.side, output.key);
  const base = { key, id, side: side.side, kind: output.kind, output, asked } as const;
  return { ...base, form: 'plan', plusMinus: 0, fields, takes, bends, early, begun, sources, own };
}

function ownOn({ own }: Work, side: string, field: string): boolean {
  const fields: unknown = own && Object.hasOwn(own, side) ? own[side] : undefined;
  return isObject(fields) && Object.hasOwn(fields, field);
}

function fieldOnce(name: string, { id, seen, outputs, side, fields, places }: Site): NodeField {
  const before = fields.get(name);
  if (before) return before;
  const schema = outputs.fields;
  const typed = side.texts.get(name) ?? NO_TEXT;
  // What isn't asked for takes nothing, whatever stands in it.
  const text = schema.asksFor(name, side.ask) ? typed : NO_TEXT;
  const kind = schema.specs[name]?.kind ?? 'text';
  const readOf =
    ({ text: one }: FieldText): NodeField['read'] =>
    (how) =>
      schema.readOne(name, one, side.ask, how);
  // What all sides share is in doubt once.
  const owner = homeOf(id, ownOn(seen.work, side.side, name) ? side.side : '', '');
  const site = { side: side.side, owner, places, read: side.read };
  const field = nodeField(name, text, { kind, readOf }, site);
  fields.set(name, field);
  return field;
}
