// Installs the locked packages when they are missing or are not the ones in package-lock.json.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const readPackages = (path) => JSON.parse(readFileSync(path, 'utf8')).packages ?? {};

/** Names what differs first, or null when everything locked is installed. Packages for other machines may be absent. */
export function firstStalePackage(locked, installed) {
  for (const [path, entry] of Object.entries(locked)) {
    if (path === '') continue;
    const there = installed[path];
    if (there === undefined && entry.optional !== true && entry.devOptional !== true) return path;
    if (there !== undefined && there.version !== entry.version) return path;
    if (there !== undefined && there.integrity !== entry.integrity) return path;
  }
  return null;
}

export function ensureInstalled(root) {
  const record = join(root, 'node_modules', '.package-lock.json');
  const stale = existsSync(record)
    ? firstStalePackage(readPackages(join(root, 'package-lock.json')), readPackages(record))
    : 'node_modules';
  if (stale === null) return;
  console.error(`installing the locked packages (${stale} is missing or out of date): npm ci`);
  const run = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (run.status === 0) return;
  console.error('npm ci did not finish. It needs the package registry once; see its message above.');
  process.exit(1);
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  ensureInstalled(join(import.meta.dirname, '..'));
