import { OUTPUTS } from '../../../src/calculations/list.ts';
import type { Known } from '../../../src/garment/work-out/seen-work.ts';
import { TOYS } from './toys.ts';

const real = await Promise.all(Object.values(OUTPUTS).map((load) => load()));

/** Every calculation of the app, and toys of the shapes it has none of. */
export const KNOWN: Known = new Map([...real, ...TOYS].map((one) => [one.id, one]));
