/** How the app stands on this phone: connection, storage, updates; and the mend. */
export const phoneWords = {
  ready: 'Ready without a connection.',
  readyNow: 'Everything is on this phone now: it works without a connection.',
  getting: 'Storing itself for work without a connection…',
  tape: {
    here: 'Reading a tape is ready without a connection, too.',
    coming: 'Storing what reads a tape (4.4 MB)…',
    missing: 'What reads a tape is not stored yet: open “Read a tape” once with a connection.',
  },
  blocked: {
    insecure:
      'This address is not https, so the browser will not store the app: it needs a connection.',
    unsupported: 'This browser cannot store the app: it needs a connection.',
    refused:
      'The browser refused to store the app: it needs a connection. Allow site data for this address.',
    incomplete: 'Not every part of the app has arrived. It tries again at the next start.',
  },
  store: {
    refused:
      'The browser refuses storage: settings and last numbers are lost when the page closes. Allow site data for this address.',
    full: 'The phone’s storage is full: settings and last numbers are not kept. Free some space.',
    slow: 'Storage does not answer: settings and last numbers may not be kept. Close other tabs of this app.',
    outdated:
      'A newer version of this app has been at work on this phone, so settings and last numbers are not kept. Close this one in every tab, then open it again with a connection.',
  },
  update: 'A newer version is here.',
  takeUpdate: 'Take it now',
  taking: {
    asked: 'Taking the newer version…',
    'held up':
      'The older version is still at work. The newer one comes by itself once every open page of this app has been left alone for half a minute.',
  },
  restore: 'Restore a backup',
  later: 'Later',
  understood: 'Good',
};
