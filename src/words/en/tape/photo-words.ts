/** Reading a tape off a photo: what can be pressed, and what is said. */
export const photoWords = {
  title: (field: string | undefined) => (field ? `${field}: from a photo` : 'Read a tape'),
  how: 'Hold the phone square on, the tape flat, at least three of its numbers in sight.',
  stays: 'The photo stays on this phone and is not kept.',
  take: 'Take a photo',
  choose: 'Choose a photo',
  live: 'Live',
  back: 'Back',
  another: 'Another photo',
  opening: 'Opening the photo…',
  reading: (done: number) => `Reading the tape… ${Math.round(done * 100)} %`,
  stop: 'Stop',
  byTouch: 'Touch two lines',
  point: 'Or touch a long line whose number you can read: it is looked at closely.',
  again: 'Try once more',
};

/** What went wrong around the picture, and what to do. */
export const photoFaultWords = {
  'not-a-picture': 'This file is not a picture. Choose a photo.',
  damaged: 'This picture is damaged or cut short. Take the photo anew.',
  strange: 'This browser does not know this kind of picture. Choose a JPEG or PNG.',
  'too-large':
    'This picture is too large for the phone’s memory. Take it with fewer pixels, or choose a JPEG.',
  unreadable:
    'This file can’t be read: it may have been moved, or not be on this phone. Choose another.',
  slow: 'This picture takes too long to open. Choose a smaller one.',
  unfetched: 'What opens photos could not be fetched. Connect once, then choose the photo again.',
  'not-shared': 'The shared photo did not arrive. Choose it here.',
  'engine-missing':
    'What reads the numbers is not on this phone yet. Connect once, with a good signal, and try once more; until then touch two lines yourself.',
  'engine-refused':
    'This browser refuses what reads the numbers (WebAssembly). Allow it in its settings, or touch two lines yourself.',
  'engine-failed': 'What reads the numbers has failed. Try once more, or touch two lines yourself.',
  'reader-failed': 'The tape reader has failed. Try once more, or another photo.',
  'reader-slow': 'The tape reader took too long. Try a photo that shows less around the tape.',
};
