#!/usr/bin/env node
// Runs the bundle in dist/ if it is newer than every source, else the source itself through tsx.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const app = join(dirname(fileURLToPath(import.meta.url)), '..');
const root = join(app, '..', '..');
const bundle = join(app, 'dist', 'main.mjs');

function changedAfter(folder, timeMs) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (entry.name === 'node_modules' || entry.name === 'dist') continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory() ? changedAfter(path, timeMs) : statSync(path).mtimeMs > timeMs) return true;
  }
  return false;
}

function bundleIsFresh() {
  if (!existsSync(bundle)) return false;
  const builtMs = statSync(bundle).mtimeMs;
  const sources = [join(app, 'src'), join(root, 'packages'), join(root, 'adapters')].filter(existsSync);
  return !sources.some((folder) => changedAfter(folder, builtMs));
}

if (bundleIsFresh()) {
  await import(pathToFileURL(bundle).href);
} else {
  const { register } = await import('tsx/esm/api');
  register();
  await import(pathToFileURL(join(app, 'src', 'main.ts')).href);
}
