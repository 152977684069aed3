/** What a printed scale counts in. Tenths or sixteenths of an inch are subdivisions of 'inch'. */
export type TapeUnit = 'cm' | 'mm' | 'inch';

export const mmPerUnit: Readonly<Record<TapeUnit, number>> = { cm: 10, mm: 1, inch: 25.4 };
