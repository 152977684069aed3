import { byId, readHome } from '../record/home.ts';
import type { Garment } from '../record/record.ts';
import { type Seen, type Sound, soundOf } from '../record/sound.ts';
import { type Block, type Blocks, changedIn } from './blocks.ts';
import { type Made, nodesOf } from './nodes.ts';
import { NodesByKey } from './nodes-by-key.ts';
import type { Result } from './result.ts';
import { type Cell, Round } from './round.ts';
import { type Known, type SeenWork, seenWork } from './seen-work.ts';
import { type Told, told, toldOf } from './told.ts';

/** What an earlier answer leaves for the next one. */
export interface Memory {
  seen: Seen;
  blocks: Blocks;
}

/** A garment worked out: every number by its key, and what is to be said of all. */
export interface Answer extends Told {
  values: ReadonlyMap<string, Result>;
  nodes: NodesByKey;
  /** The keys of the numbers that one reads. */
  sources(key: string): readonly string[];
  works: ReadonlyMap<string, SeenWork>;
  sound: Sound;
  /** Its `blocks`: each the same object as before as long as nothing of it came out otherwise. */
  memory: Memory;
  /** How many numbers were worked out anew. */
  evaluated: number;
}

/**
 * Works a garment out: takes any record and never throws. The same whatever is remembered; with
 * an earlier answer's memory only works that changed are looked at and all that read them, near or
 * far, and of those only what reads something that came out otherwise is worked out anew, at most
 * once. No bench and no clock: no number depends on them.
 *
 * @param known what each calculation gives
 */
export function workOut(garment: Garment, known: Known, memory?: Memory): Answer {
  const seen: Seen = memory?.seen ?? new WeakMap();
  const before: Blocks = memory?.blocks ?? new Map();
  const sound = soundOf(garment, seen);
  const works = new Map(
    [...sound.works].map(([id, work]) => [id, seenWork(work, known, seen)] as const),
  );
  const made = nodesOf(sound, works, before, seen);
  const changed = changedIn(made, before);
  const standing = (id: string) => (changed.has(id) ? undefined : before.get(id));
  const values = valuesOf([...made.keys()].flatMap((id) => standing(id) ?? []));
  const open = [...made].flatMap(([id, { nodes }]) => (changed.has(id) ? nodes : []));
  const round = new Round(open, values, ({ id, key }) => before.get(id)?.cells.get(key));
  const passed = byId(sound.passed);
  const blocks = new Map(
    [...made].map(([id, one]): [string, Block] => {
      const was = standing(id);
      const its = (passed.get(id) ?? []).join();
      if (was?.passed === its) return [id, was];
      const says = toldOf(one.nodes, sound, works.get(id), (key) => values.get(key));
      return [id, { made: one, cells: was?.cells ?? cellsOf(one, round), passed: its, says }];
    }),
  );
  return {
    ...told(sound, works, blocks),
    values,
    nodes: new NodesByKey(made),
    sources: (key) => blocks.get(readHome(key).id)?.cells.get(key)?.reads ?? [],
    works,
    sound,
    memory: { seen, blocks },
    evaluated: round.evaluated,
  };
}

function valuesOf(blocks: readonly Block[]): Map<string, Result> {
  const values = new Map<string, Result>();
  for (const { cells } of blocks) for (const [key, { result }] of cells) values.set(key, result);
  return values;
}

function cellsOf({ nodes }: Made, { cells }: Round): Map<string, Cell> {
  return new Map(
    nodes.flatMap(({ key }) => {
      const cell = cells.get(key);
      return cell ? [[key, cell] as const] : [];
    }),
  );
}
