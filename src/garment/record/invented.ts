/** Invented garments there are to look at, in the order they are shown in. */
export const INVENTED_GARMENTS = ['waistcoat', 'skirt', 'shirt'] as const;

export type InventedGarment = (typeof INVENTED_GARMENTS)[number];
