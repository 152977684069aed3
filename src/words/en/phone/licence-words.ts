/** What others wrote of the app. */
export const licenceWords = {
  title: 'What the app is made of, and its licences',
  about:
    'The app itself is under the MIT licence. These parts were written by others; touch one to read its licence.',
  part: (name: string, version: string, licence: string) => `${name} ${version} · ${licence}`,
  noText: (licence: string) => `${licence}. It came without a text of its own.`,
  fetching: 'Fetching the list…',
  missing: 'The list is not on this phone yet, and there is no connection.',
  again: 'Try once more',
};
