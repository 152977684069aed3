/** What is said where the app's host has a newer build than this page, and lacks its parts. */
export const newerWords = {
  screen:
    'This screen is of an older version than the app’s host has now. Try again to load the newer one; what was typed is in the address.',
  deed: 'Not done: this version of the app is older than the one on its host, and a part of it is gone from there. Load the page again, then do it again; nothing here is lost.',
  photo:
    'What opens and reads photos here is of an older version than the app’s host has now, so it can’t be fetched. Load the newer version, then choose the photo again.',
  /** After the name of the calculation a number off a photo was to go to. */
  use: 'of an older version than the app’s host has now, so it can’t be fetched, and the number was not used; it stays here. Use it in “Inches and centimetres” before you load the newer version.',
  /** After the name of what was kept. */
  calculation:
    'its calculation is of an older version than the app’s host has now, so it can’t be fetched. Load the newer version, then open this again.',
};

/** On the key that does so. */
export const loadNewer = 'Load the newer version';
