import type { KindOf } from './kind.ts';
export const lookalikes = {} as const satisfies Record<string, KindOf>;
