// Runs a TypeScript file of ours with the Node that is there: `node .ci/ts.mjs tests/bench/keys.ts`.
import { resolve } from 'node:path';
import { runnerImport } from 'vite';

const file = process.argv[2];
if (!file) throw new Error('which file? node .ci/ts.mjs FILE');
await runnerImport(resolve(file), { configFile: false, logLevel: 'error' });
