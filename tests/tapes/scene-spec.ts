import type { CameraSpec } from './camera.ts';
import type { GroundSpec } from './ground.ts';
import type { LensSpec } from './lens.ts';
import type { LightSpec } from './light.ts';
import type { SensorSpec } from './sensor.ts';
import type { TapeSpec } from './tape-spec.ts';

/** Everything that a picture is made from. */
export interface SceneSpec {
  readonly camera: CameraSpec;
  readonly ground: GroundSpec;
  readonly tapes: readonly TapeSpec[];
  readonly light: LightSpec;
  readonly lens: LensSpec;
  readonly sensor: SensorSpec;
  readonly note: string;
}
