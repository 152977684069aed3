import { rm } from 'node:fs/promises';
import { createServer } from 'node:net';
import lighthouse from 'lighthouse';
import { buildApp, serveApp } from './built.ts';
import { launchBrowser } from './harness.ts';
import { SCREENS } from './screens.ts';

/**
 * `npm run lighthouse`: the four scores of every screen, 100 being the most.
 *
 * Performance moves with how busy the machine is; the other three don't.
 */
const port = await freePort();
const built = await buildApp();
const served = await serveApp(built);
const browser = await launchBrowser([`--remote-debugging-port=${port}`]);

for (const { name, hash } of SCREENS) {
  const outcome = await lighthouse(`${served.address}${hash}`, { port, logLevel: 'error' });
  if (!outcome) throw new Error(`lighthouse said nothing of ${hash}`);
  const { categories, audits } = outcome.lhr;
  const scores = Object.values(categories).map(
    ({ title, score }) => `${title} ${Math.round((score ?? 0) * 100)}`,
  );
  console.log(`${name}: ${scores.join(', ')}`);
  for (const { id, title, score } of Object.values(audits)) {
    if (score !== null && score < 0.9) console.log(`  ${id}: ${title}`);
  }
}

await browser.close();
await served.close();
await rm(built, { recursive: true });

function freePort(): Promise<number> {
  return new Promise((found) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const address = server.address();
      if (typeof address !== 'object' || !address) throw new Error('no port was given');
      server.close(() => found(address.port));
    });
  });
}
