import { rm } from 'node:fs/promises';
import type {} from 'vitest';
import type { TestProject } from 'vitest/node';
import { buildApp, serveApp } from './built.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the production build is served. */
    address: string;
    /** The folder it was built into. */
    built: string;
  }
}

export default async function setUp(project: TestProject) {
  const built = await buildApp();
  const served = await serveApp(built);
  project.provide('address', served.address);
  project.provide('built', built);
  return async () => {
    await served.close();
    await rm(built, { recursive: true, force: true });
  };
}
