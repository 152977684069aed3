import type { MaterialKind, MaterialTaken } from '../../calculation/material.ts';
import type { Output } from '../../calculation/output.ts';
import type { EdgeWidths } from '../../sewing/pieces/piece-edges.ts';
import { isMade } from '../next/next.ts';
import { homeOf, readHome } from '../record/home.ts';
import { plusMinus } from '../work-out/doubt.ts';
import { givenOf } from '../work-out/evaluate.ts';
import type { Trouble } from '../work-out/result.ts';
import { absentBy, type SeenSide, type SeenWork } from '../work-out/seen-work.ts';
import type { GarmentStep } from '../work-out/told.ts';
import type { Answer } from '../work-out/work-out.ts';

/** How much one side of a work takes of a material. Lengths in 1/8000 mm, at the most they may be. */
export interface NeedSize {
  count: number;
  /** How long each is; undefined of what is only counted, and of a strip as long as its edge. */
  along?: number | undefined;
  across?: number | undefined;
  /** One side of it lies on the fold. */
  fold: boolean;
}

/** Why it isn't known how much is taken: the number, and what is the matter with it. */
export interface NeedWaits {
  home: string;
  trouble: Trouble;
}

/** What one side of a work takes. */
export interface Need {
  /** Of all sides of the work together: under this a material is said to serve it. */
  key: string;
  /** The output that declares it, on its side. */
  home: string;
  work: string;
  side: string;
  kind: MaterialKind;
  /** What it is measured by: pieces have both sizes, of which an edge's length is for the maker to say. */
  by: 'piece' | 'edge' | 'length' | 'count';
  /** Undefined while it waits. */
  size: NeedSize | undefined;
  /** How far its raw edges lie beyond the finished ones; undefined where that isn't known. */
  edges: EdgeWidths | undefined;
  waits: readonly NeedWaits[];
  /** Of thread: how many are fed at once, each from a spool of its own; else one. */
  fed: number;
  /** A decision is open behind it. */
  undecided: boolean;
  state: 'planned' | 'partly made' | 'made';
  /** Its place in the order of the work. */
  place: number;
}

/** What all works of a garment take, in the order of the work. */
export function needsOf(answer: Answer): Need[] {
  const places = new Map(answer.steps.map(({ home }, place) => [home, place]));
  const needs = [...answer.works].flatMap(([id, seen]) => {
    if (seen.work.off || !seen.outputs) return [];
    return seen.outputs.outputs.flatMap((output) => {
      const { material } = output;
      if (!material) return [];
      return seen.sides.flatMap(
        (side) => needOf({ answer, id, seen, side, output, material, places }) ?? [],
      );
    });
  });
  return needs.sort((a, b) => a.place - b.place);
}

type Keyed = Pick<Output, 'key'>;

interface Site {
  answer: Answer;
  id: string;
  seen: SeenWork;
  side: SeenSide;
  output: Output;
  material: MaterialTaken;
  places: ReadonlyMap<string, number>;
}

function needOf(site: Site): Need | undefined {
  const { answer, id, side, output, material } = site;
  if (material.unless?.(side.ask)) return undefined;
  const own = numberAt(site, output);
  if ('absent' in own && !material.always) return undefined;
  const { along, across } = material;
  const size = {
    own,
    along: along && longOf(site, along),
    across: across && numberAt(site, across),
  };
  const read = [own, size.along, size.across].filter((one) => one !== undefined);
  const numbers = [output, size.along && along, across].filter((one) => one !== undefined);
  const homes = numbers.map(({ key }) => homeOf(id, side.side, key));
  const steps = stepsOf(answer, homes);
  return {
    key: homeOf(id, '', output.key),
    home: homeOf(id, side.side, output.key),
    ...{ work: id, side: side.side, kind: material.kind },
    by: measuredBy(site, size.along !== undefined),
    size: sizeOf(site, size, material.fold?.(side.ask) === true),
    edges: edgesOf(site),
    fed: material.fed?.(side.ask) ?? 1,
    waits: read.flatMap((one, i) => waitsFor(site, one, numbers[i] as Keyed)),
    undecided: read.some((one) => 'most' in one && one.undecided),
    state: stateOf(steps),
    place: Math.min(...steps.map(({ home }) => site.places.get(home) ?? 0), site.places.size),
  };
}

function edgesOf({ answer, id, side, material }: Site): EdgeWidths | undefined {
  const node = material.along && answer.nodes.get(homeOf(id, side.side, material.along.key));
  if (!material.edges || node?.form !== 'plan') return undefined;
  const given = givenOf(node, (key) => answer.values.get(key));
  return given && material.edges(given.fields);
}

/** How long it is; undefined of a strip whose edge's length its work isn't given. */
function longOf(site: Site, along: Keyed): Read | undefined {
  const read = numberAt(site, along);
  return site.material.edge && 'absent' in read ? undefined : read;
}

/** @param known how long a strip is */
function measuredBy({ output, material }: Site, known: boolean): Need['by'] {
  if (material.edge) return known ? 'piece' : 'edge';
  if (material.across) return 'piece';
  return output.kind === 'count' && !material.along ? 'count' : 'length';
}

/** `absent`: the field that takes it away. */
type Read = { most: number; undecided: boolean } | { trouble: Trouble } | { absent: string };

/** A number at the most it may be; a hole more is a hole to be had. */
function numberAt({ answer, id, side, seen }: Site, { key }: Keyed): Read {
  const result = answer.values.get(homeOf(id, side.side, key));
  if (!result) return { absent: absentBy(seen, side, key) ?? '' };
  if (!result.ok) {
    const { trouble } = result;
    return trouble.kind === 'absent' ? { absent: trouble.field } : { trouble };
  }
  const { value, undecided = false } = result;
  const number = typeof value === 'number' ? value : value.marks.length;
  return { most: number + plusMinus(result), undecided };
}

function sizeOf(
  { output, material }: Site,
  read: { own: Read; along: Read | undefined; across: Read | undefined },
  fold: boolean,
): NeedSize | undefined {
  const [own, along, across] = [mostOf(read.own), mostOf(read.along), mostOf(read.across)];
  const missing = (one: Read | undefined, most?: number) => one !== undefined && most === undefined;
  if (own === undefined || missing(read.along, along) || missing(read.across, across)) {
    return undefined;
  }
  if (material.edge) return { count: 1, along, across: own, fold };
  if (output.kind === 'count') return { count: Math.ceil(own), along, across, fold };
  return { count: 1, along: own, across, fold };
}

function mostOf(read: Read | undefined): number | undefined {
  return read && 'most' in read ? read.most : undefined;
}

/** What is not asked for is wanted all the same, and isn't given. */
function waitsFor({ id, side }: Site, read: Read, { key }: Keyed): NeedWaits[] {
  const home = homeOf(id, side.side, key);
  if ('most' in read) return [];
  const trouble: Trouble =
    'trouble' in read ? read.trouble : { kind: 'not given', field: read.absent };
  return [{ home, trouble }];
}

/** The steps behind numbers, in the same work and on the same side; else all steps of its cutting. */
function stepsOf({ sources, steps }: Answer, homes: readonly string[]): GarmentStep[] {
  const met = new Set(homes);
  const { id, side } = readHome(homes[0] ?? '');
  const isOwn = (key: string) => readHome(key).id === id && readHome(key).side === side;
  for (const one of met) for (const next of sources(one)) if (isOwn(next)) met.add(next);
  const behind = steps.filter(({ home }) => met.has(home));
  const all = steps.filter(({ home }) => isOwn(home));
  const cut = all.filter(({ step }) => step.stage === 'cut');
  return [behind, cut, all].find((some) => some.length > 0) ?? [];
}

function stateOf(steps: readonly GarmentStep[]): Need['state'] {
  if (steps.length > 0 && steps.every(isMade)) return 'made';
  return steps.some((step) => step.made > 0) ? 'partly made' : 'planned';
}
