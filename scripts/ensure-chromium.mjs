// Finds a Chromium for the browser checks; installs Debian's when we are root and it is missing.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const usualPlaces = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** TWELVEMONTH_CHROMIUM names another place. Null when there is none. */
export function findChromium() {
  const named = process.env.TWELVEMONTH_CHROMIUM;
  return [named, ...usualPlaces].find((path) => path && existsSync(path)) ?? null;
}

const remedy =
  'No Chromium found for the browser check: install it (Debian and Ubuntu: apt-get install chromium fonts-dejavu-core) or name it in TWELVEMONTH_CHROMIUM.';

const canInstall = () =>
  process.getuid?.() === 0 && spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status === 0;

export function ensureChromium() {
  const found = findChromium();
  if (found !== null) return found;
  if (!canInstall()) {
    console.log(remedy);
    return null;
  }
  console.log('installing chromium for the browser check: apt-get install chromium fonts-dejavu-core');
  const quiet = {
    stdio: ['ignore', 'ignore', 2],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  };
  const wanted = ['chromium', 'fonts-dejavu-core'];
  spawnSync('apt-get', ['update', '-qq'], quiet);
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...wanted], quiet);
  const installed = findChromium();
  if (installed === null) console.log(remedy);
  return installed;
}
