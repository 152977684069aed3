/** What the app says of itself where a screen is still to come, or fails. */
export const appWords = {
  loading: 'One moment…',
  notLoaded: 'This screen could not be fetched. Connect once, then try again.',
  again: 'Try again',
  home: 'Back to the start',
  broken: (message: string) =>
    `Something failed (${message}). What was typed is in the address: load the page again.`,
};
