import type { Random } from './random.ts';
import type { SceneSpec } from './scene-spec.ts';
import type { Expect } from './scene-types.ts';

/** A kind of scene: what is asked of a reader, what it is about, and how one is made. */
export interface KindOf {
  readonly expect: Expect;
  readonly about: string;
  readonly make: (random: Random) => SceneSpec;
}

export function kind(expect: Expect, about: string, make: KindOf['make']): KindOf {
  return { expect, about, make };
}
