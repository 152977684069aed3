/**
 * Why something was not kept or done with a garment, each cause with its mend. Fetched when
 * something fails; that a garment is gone is said more often, and in `garment-words.ts`.
 */
export const garmentFailedWords = {
  refused: 'Not kept: the browser refuses storage. Allow site data for this address.',
  full: 'Not kept: the phone’s storage is full. Free some space, then try again; nothing here is lost.',
  slow: 'Not done: storage does not answer. Close other tabs of this app, then try again.',
  outdated:
    'Not kept: a newer version of this app has been at work on this phone. Close this one in every tab, then open it again with a connection; what is kept is as it was.',
  cleared:
    'Not done: the browser has cleared what was kept on this phone. What this page has read is still in its memory: before you close it, open Garments and save that, or put it back.',
  damaged: 'Not kept: that garment’s record can’t be read; it is set aside. Choose another.',
  newer:
    'Not done: that garment was kept by a newer version of this app, and this one can’t read it. Close this one in every tab, then open it again with a connection; the garment is as it was.',
  there:
    'Already on that garment, under the same name and with the same numbers, perhaps from another tab. To have it there a second time, keep it again.',
  changed:
    'Not kept: it was changed on the garment since it was opened here, perhaps in another tab. To put this in its place, keep it again.',
  measured:
    'Not kept: a mark measured here was measured in another tab, too, and lies elsewhere by that. To put the measure taken here in its place, keep it again.',
  length:
    'Not kept: a length is a kilometre at the most. Go back, look at the numbers and at their units, and type them again. The garment is as it was.',
  row: 'Not kept: a row has 10,000 marks at the most. Go back and make two rows of it, or give fewer. The garment is as it was.',
  limit:
    'Not kept: it is more than one garment holds (500 works, 5,000 marks and numbers made, a million characters). The garment is as it was. Take something off it, or begin another garment.',
};
