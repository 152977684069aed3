import type { Random } from './random.ts';
import type { SceneSpec } from './scene-spec.ts';
import type { Expect } from './scene-types.ts';

/** A kind of scene: what it is about, what is asked of a reader, and how one is made. */
export interface KindOf {
  readonly about: string;
  readonly expect: Expect;
  make(random: Random): SceneSpec;
}
