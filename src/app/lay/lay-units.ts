import { UNITS_PER_MM } from '../../lengths/length.ts';

/** Lays hold millimetres; a record has whole 1/8000 of one. */
export const inMm = (units: number) => units / UNITS_PER_MM;
export const inUnitsExactly = (mm: number) => mm * UNITS_PER_MM;
export const inUnits = (mm: number) => Math.round(inUnitsExactly(mm));
