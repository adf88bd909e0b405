// Fills the README's generated blocks from what the programs really say; with --check, only tells whether they are current.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { blockNames, replaceBlock } from './marked-blocks.mjs';
import { readmeBlocks } from './readme-blocks.mjs';

const root = join(import.meta.dirname, '..');
const path = join(root, 'README.md');
const check = process.argv.includes('--check');
const before = readFileSync(path, 'utf8');

let after = before;
const stale = [];
for (const name of blockNames(before)) {
  const block = readmeBlocks[name];
  if (block === undefined) {
    console.error(`README.md: nobody makes the block "${name}"`);
    process.exit(1);
  }
  if (!existsSync(join(root, block.needs))) {
    console.log(`README.md: block "${name}" waits for ${block.needs}`);
    continue;
  }
  const next = replaceBlock(after, name, block.make(root));
  if (next !== after) stale.push(name);
  after = next;
}

if (stale.length === 0) {
  console.log('README.md: every block is current');
} else if (check) {
  console.error(`README.md: not current: ${stale.join(', ')}. Run: npm run docs`);
  process.exit(1);
} else {
  writeFileSync(path, after);
  console.log(`README.md: rewrote ${stale.join(', ')}`);
}
