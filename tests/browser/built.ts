import { execFile } from 'node:child_process';
import { mkdtemp } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { preview } from 'vite';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Builds the app for production into a fresh folder, so that a build of someone
 * else's in `dist` is neither used nor overwritten.
 *
 * It runs in a process of its own: the test runner's NODE_ENV would leak into the build.
 */
export async function buildApp({
  root = ROOT,
  into,
  more = [],
}: {
  /** Of what: this project, or a copy of it. */
  root?: string;
  /** A folder that is there and empty, unless a new one is wanted. */
  into?: string;
  more?: readonly string[];
} = {}): Promise<string> {
  const folder = into ?? (await mkdtemp(join(tmpdir(), 'thumbrule-build-')));
  const { NODE_ENV: _, VITEST: __, ...env } = process.env;
  const vite = join(root, 'node_modules/vite/bin/vite.js');
  const args = [vite, 'build', '--outDir', folder, '--emptyOutDir', '--logLevel', 'warn'];
  await promisify(execFile)(process.execPath, [...args, ...more], { cwd: root, env });
  return folder;
}

export interface Served {
  address: string;
  /** Every path asked for so far, in order, without its query. */
  asked: string[];
  close(): Promise<void>;
}

/** Serves a built folder at a free port, the way `npm start` does. */
export async function serveApp(folder: string): Promise<Served> {
  const server = await preview({
    configFile: false,
    root: ROOT,
    base: './',
    appType: 'mpa',
    logLevel: 'error',
    build: { outDir: folder },
    preview: { port: 0, host: '127.0.0.1' },
  });
  const asked: string[] = [];
  // Before the server's own listener, which rewrites `/`.
  server.httpServer.prependListener('request', (request: { url?: string }) => {
    asked.push(new URL(request.url ?? '/', 'http://here').pathname);
  });
  const { port } = server.httpServer.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/`, asked, close: () => server.close() };
}
