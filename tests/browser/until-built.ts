import { get } from 'node:http';
import { text } from 'node:stream/consumers';
import { beforeAll, inject } from 'vitest';

// Every file of the tests that need the built app begins here. On a machine with much else to do
// a build can take longer than `fetch` would wait.
beforeAll(async () => {
  const wrong = await new Promise<string>((told, failed) => {
    get(inject('whenBuilt'), (answer) => told(text(answer))).on('error', failed);
  });
  if (wrong) throw new Error(wrong);
}, 600_000);
