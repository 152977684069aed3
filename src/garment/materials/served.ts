import { MATERIALS, type MaterialForm, type MaterialKind } from '../../calculation/material.ts';
import type { Material } from '../record/material.ts';
import type { Need } from './need.ts';

/** A material, and what is taken of it. */
export interface Served {
  id: string;
  kind: MaterialKind;
  form: MaterialForm;
  said: Material;
  /** The maker added it. */
  own: boolean;
  /** In the order of the work. */
  needs: readonly Need[];
  /** What could be taken of it. */
  could: readonly Need[];
}

const FITS: Readonly<Record<MaterialForm, readonly Need['by'][]>> = {
  laid: ['piece', 'edge'],
  length: ['piece', 'edge', 'length'],
  count: ['count'],
};

/**
 * Which needs are taken of which material. All cloth is one, and all interfacing; of the rest each
 * need has its own, under the id it has here. What the maker says goes before: a need taken of
 * another than its own is not taken of its own as well, but for cloth, which has a lining, too.
 */
export function servedBy(needs: readonly Need[], said: ReadonlyMap<string, Material>): Served[] {
  const kinds = new Map<string, MaterialKind>(needs.map((need) => [ownId(need), need.kind]));
  const added = [...said].filter(([id]) => !kinds.has(id)).sort(byRank);
  const ids = [...kinds.keys(), ...added.map(([id]) => id)];
  const asked = new Set(ids.flatMap((id) => keysFor(said.get(id))));
  const elsewhere = ({ kind, key }: Need) => MATERIALS[kind] !== 'laid' && asked.has(key);
  return ids.flatMap((id): Served[] => {
    const material = said.get(id) ?? {};
    const kind = kinds.get(id) ?? material.kind;
    // What was said of something that nothing takes any more is kept, and waits.
    if (!kind) return [];
    const form = formOf(kind, material);
    const could = needs.filter(({ by }) => FITS[form].includes(by));
    const takes = (need: Need) =>
      isSaid(material, need) ?? (ownId(need) === id && !elsewhere(need));
    const served = { ...{ id, kind, form, could }, said: material, own: !kinds.has(id) };
    return [{ ...served, needs: could.filter(takes) }];
  });
}

/** The material a need is taken of where nothing is said. */
function ownId({ kind, key }: Need): string {
  return MATERIALS[kind] === 'laid' ? kind : `${kind}|${key}`;
}

/** A strip is bought as such, or cut from something as wide as is said. */
function formOf(kind: MaterialKind, { width }: Material): MaterialForm {
  return isStrip(kind) && width !== undefined ? 'laid' : MATERIALS[kind];
}

/** Along the grain or across it: what may be bought as it is, or cut. */
export const isStrip = (kind: MaterialKind) => kind === 'strip' || kind === 'bias';

function isSaid({ serves }: Material, { key }: Need): boolean | undefined {
  return serves && Object.hasOwn(serves, key) ? serves[key] : undefined;
}

/** The needs that are said to be taken of it. */
function keysFor(said: Material | undefined): string[] {
  return Object.entries(said?.serves ?? {}).flatMap(([key, is]) => (is ? key : []));
}

function byRank(one: [string, Material], other: [string, Material]): number {
  return (one[1].rank ?? 0) - (other[1].rank ?? 0) || (one[0] < other[0] ? -1 : 1);
}
