import type { CameraSpec } from './camera.ts';
import type { GroundSpec } from './ground.ts';
import type { Hider } from './hider.ts';
import type { LensSpec } from './lens.ts';
import type { LightSpec } from './light.ts';
import type { SensorSpec } from './sensor.ts';
import type { TapeSpec } from './tape-spec.ts';

/** Everything that a picture is made from. */
export interface SceneSpec {
  readonly camera: CameraSpec;
  readonly ground: GroundSpec;
  /** From the lowest to the topmost. */
  readonly tapes: readonly TapeSpec[];
  /** What lies over them. */
  readonly hiders: readonly Hider[];
  readonly light: LightSpec;
  readonly lens: LensSpec;
  readonly sensor: SensorSpec;
  readonly note: string;
}
