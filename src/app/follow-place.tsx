import type { ComponentProps } from 'preact';

import { Follow } from '../controls/follow.tsx';
import { keepAwake } from './awake.ts';
import { speak } from './voice.ts';

const SERVICES = { speak, keepAwake };

/** Following the marks with what this phone has: its voice, its screen kept on. */
export function FollowPlace(props: Omit<ComponentProps<typeof Follow>, 'services'>) {
  return <Follow {...props} services={SERVICES} />;
}
