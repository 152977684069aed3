// Runs before `npm start` and `npm test` on whatever Node is there, before anything
// is installed: nothing but Node itself may be imported here.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium } from './chromium.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const stampFile = join(root, 'node_modules', '.thumbrule-stamp');
const wantsBrowser = process.argv.includes('--browser');

needNode();
installPackages();
if (wantsBrowser) needBrowser();

function needNode() {
  const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const least = /(\d+)\.(\d+)/.exec(engines.node);
  if (!least) throw new Error(`no version of Node in engines.node: ${engines.node}`);
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const enough =
    major > Number(least[1]) || (major === Number(least[1]) && minor >= Number(least[2]));
  if (!enough) {
    stop(`Thumbrule needs Node ${least[0]} or newer; this is Node ${process.versions.node}.
Install a newer one from your system's packages or from nodejs.org, then run this again.`);
  }
}

function installPackages() {
  const lock = readFileSync(join(root, 'package-lock.json'));
  const stamp = createHash('sha256').update(lock).update(process.version).digest('hex');
  if (existsSync(stampFile) && readFileSync(stampFile, 'utf8') === stamp) return;

  console.log('Installing what package-lock.json lists…');
  // `--include=dev`: NODE_ENV=production would leave out what builds and tests the app.
  const done = npm(['ci', '--include=dev', '--no-fund', '--no-audit', '--loglevel=error']);
  if (done.status !== 0) {
    stop(
      '`npm ci` did not finish (its messages are above). Is there a connection to the registry?',
    );
  }
  writeFileSync(stampFile, stamp);
}

function needBrowser() {
  if (findChromium()) return;
  const asked = process.env.CHROMIUM_PATH;
  if (asked) stop(`CHROMIUM_PATH is ${asked}, and no browser starts from there.`);
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) installBrowser();
  if (findChromium()) return;
  stop(`The tests drive Chromium, and none was found on this machine.
  Debian:  sudo apt-get install chromium
  Fedora:  sudo dnf install chromium
  Mac:     brew install --cask chromium
Or set CHROMIUM_PATH to a Chromium you have.`);
}

function installBrowser() {
  console.log('Installing Chromium with apt-get…');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const lockWait = ['-o', 'DPkg::Lock::Timeout=300'];
  run('apt-get', [...lockWait, '-q', 'update'], env);
  run('apt-get', [...lockWait, '-q', 'install', '-y', '--no-install-recommends', 'chromium'], env);
}

/**
 * Calls the npm that called us, when one did.
 *
 * @param {string[]} args
 */
function npm(args) {
  const cli = process.env.npm_execpath;
  return cli && /npm-cli\.c?js$/.test(cli)
    ? run(process.execPath, [cli, ...args])
    : run('npm', args);
}

/**
 * @param {string} command
 * @param {string[]} args
 * @param {NodeJS.ProcessEnv} [env]
 */
function run(command, args, env = process.env) {
  return spawnSync(command, args, { cwd: root, env, stdio: ['ignore', 'inherit', 'inherit'] });
}

/**
 * Says what is wrong and ends. Before the tests, what reads their closing line finds one here too.
 *
 * @param {string} words
 * @returns {never}
 */
function stop(words) {
  console.error(`\n${words}\n`);
  if (wantsBrowser) console.log('0 passed, 1 failed');
  process.exit(1);
}
