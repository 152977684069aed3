import type { ComponentProps } from 'preact';

import { Follow } from '../../controls/follow/follow.tsx';
import { Tally } from '../../controls/follow/tally.tsx';
import { keepAwake } from '../start/awake.ts';
import { speak } from '../start/voice.ts';

const SERVICES = { speak, keepAwake };

type Props = Omit<ComponentProps<typeof Follow>, 'services'> & { counting: boolean };

/** Following marks or counting, with what this phone has: its voice, its screen kept on. */
export function FollowPlace({ counting, ...props }: Props) {
  const Part = counting ? Tally : Follow;
  return <Part {...props} services={SERVICES} />;
}
