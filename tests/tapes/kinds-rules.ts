import type { KindOf } from './kind.ts';
export const rules = {} as const satisfies Record<string, KindOf>;
