import type { KindOf } from './kind.ts';
export const notTapes = {} as const satisfies Record<string, KindOf>;
