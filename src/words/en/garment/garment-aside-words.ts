const records = (count: number) => (count === 1 ? 'One record' : `${count} records`);
const are = (count: number) => (count === 1 ? 'is' : 'are');
const them = (count: number) => (count === 1 ? 'it' : 'them');

/** What lies beside the garments: put away, not to be read, or only in memory. */
export const garmentAsideWords = {
  away: 'Put away, to be had back',
  setAside: (count: number) =>
    `${records(count)} could not be read and ${are(count)} set aside, unchanged; a backup holds ${them(count)} too. Save ${them(count)} to a file for someone who can look.`,
  newer: (count: number) =>
    `${records(count)} ${are(count)} from a newer version of this app and ${are(count)} set aside, unchanged; a backup holds ${them(count)} too. Close the app in every tab and open it again with a connection, to read ${them(count)}.`,
  saveSetAside: 'Save what was set aside',
  cleared: (names: string) =>
    `The browser has cleared what was kept here. This page still has in its memory: ${names}. Save that, or put it back, before you close the page.`,
  saveCleared: 'Save it to a file',
  putBackCleared: 'Put it back',
};
