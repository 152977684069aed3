/** Reading a tape in the camera's picture. */
export const liveWords = {
  title: 'Live',
  starting: 'Starting the camera…',
  aim: 'Bring the cross onto the place on the tape.',
  looking: 'Looking for the tape. Hold still over it.',
  asks: 'The tape is found, but not sure which line or unit it is. Press Freeze: it asks you there.',
  held: 'Holding the tape.',
  lost: 'The tape is lost.',
  freeze: 'Freeze',
  say: 'Speak',
  faults: {
    refused:
      'The camera is not allowed. Allow it for this address in the browser’s settings, or choose a photo.',
    missing: 'There is no camera this browser can use. Choose a photo instead.',
    busy: 'The camera can’t be had now: another app may have it. Close that one, or choose a photo.',
  },
};
