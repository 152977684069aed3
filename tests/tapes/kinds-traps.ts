import type { KindOf } from './kind.ts';
export const traps = {} as const satisfies Record<string, KindOf>;
