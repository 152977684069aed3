import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { ROOT } from './sources.ts';

/** Runs a tool from node_modules with the Node that is there; gives back whether it was content, and all it said. */
export function runTool(tool: string, args: readonly string[]) {
  return new Promise<{ ok: boolean; said: string }>((done) => {
    const command = [join(ROOT, 'node_modules', tool), ...args];
    const options = { cwd: ROOT, maxBuffer: 64 * 1024 * 1024 };
    execFile(process.execPath, command, options, (error, stdout, stderr) => {
      done({ ok: error === null, said: stdout + stderr });
    });
  });
}
