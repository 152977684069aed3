import { mkdtemp, rm } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type {} from 'vitest';
import type { TestProject } from 'vitest/node';
import { buildApp, serveApp } from './built.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the production build is served. */
    address: string;
    /** The folder it was built into. */
    built: string;
    /** What answers once it is built: with nothing, or with what is wrong. */
    whenBuilt: string;
  }
}

/** The app is built while what needs no browser is tried (.ci/order.mjs); `until-built.ts` waits for it. */
export default async function setUp(project: TestProject) {
  const built = await mkdtemp(join(tmpdir(), 'thumbrule-build-'));
  const building = buildApp({ into: built }).then(
    () => '',
    (error: unknown) => String(error),
  );
  const served = await serveApp(built);
  const teller = createServer((_, answer) => void building.then((wrong) => answer.end(wrong)));
  await new Promise<void>((listening) => teller.listen(0, '127.0.0.1', listening));
  project.provide('address', served.address);
  project.provide('built', built);
  project.provide('whenBuilt', `http://127.0.0.1:${(teller.address() as AddressInfo).port}/`);
  return async () => {
    await building;
    teller.close();
    await served.close();
    await rm(built, { recursive: true, force: true });
  };
}
