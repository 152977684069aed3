/** When it is time for a backup. */
export const garmentDueWords = {
  due: (changes: number, days: number, ever: boolean) =>
    `${changes === 1 ? '1 change' : `${changes} changes`} ${
      days === 0 ? '' : `in ${days === 1 ? '1 day' : `${days} days`} `
    }${ever ? 'since the last backup' : 'in no backup yet'}.`,
  later: 'Not now',
};
