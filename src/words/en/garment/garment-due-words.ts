interface Due {
  garments: number;
  made: number;
  changes: number;
  days: number;
}

const many = (count: number, one: string, more: string) => `${count} ${count === 1 ? one : more}`;

/** When it is time for a backup. */
export const garmentDueWords = {
  /** What would be lost with this phone. @param ever there has been a backup before */
  due: ({ garments, made, changes, days }: Due, ever: boolean) =>
    [
      `Only on this phone: ${many(garments, 'garment', 'garments')}`,
      made > 0 ? `, ${made} made` : '',
      `, ${many(changes, 'change', 'changes')}`,
      days > 0 ? ` in ${many(days, 'day', 'days')}` : '',
      ever ? ' since the last backup.' : ', in no backup yet.',
    ].join(''),
  later: 'Not now',
};
