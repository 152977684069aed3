/** Garments, wherever they are named. */
export const garmentWords = {
  title: 'Garments',
  name: 'Name',
  newGarment: 'A new garment',
  make: 'Make',
  makeHint: 'such as: Grey waistcoat',
  rename: 'Rename',
  bringBack: 'Bring back',
  again: 'Try again',
  back: 'Back',
  waiting: (count: number) =>
    `${count === 1 ? 'One change is' : `${count} changes are`} held in this page only, and tried again until kept. Leave the page open.`,
  tryNow: 'Try again now',
  nameMissing: 'Name: give it one, so that you find it again.',
  gone: 'Not done: that garment is not here. It may have been put away in another tab. Choose another.',
  notFetched:
    'Not done: a part of the app could not be fetched. Connect once, then try again; nothing here is lost.',
};
