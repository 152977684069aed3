import { cloth, roomLight, sensor, sharpLens } from './circumstances.ts';
import type { Random } from './random.ts';
import type { SceneSpec } from './scene-spec.ts';

/** A scene with an ordinary cloth, light, lens and sensor, but for the parts given. */
export function onBench(
  random: Random,
  parts: Pick<SceneSpec, 'camera' | 'tapes' | 'note'> & Partial<SceneSpec>,
): SceneSpec {
  return {
    ground: cloth(random),
    hiders: [],
    light: roomLight(random),
    lens: sharpLens(random),
    sensor: sensor(random),
    ...parts,
  };
}
