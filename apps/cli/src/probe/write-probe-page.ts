// Writes docs/probe.md; --check: only says whether it is current.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { probeModels } from './all-models.ts';
import { probePage } from './list-text.ts';

const file = new URL('../../../../docs/probe.md', import.meta.url);
const text = probePage(probeModels);
const current = existsSync(file) && readFileSync(file, 'utf8') === text;
if (current) console.log('docs/probe.md is current');
else if (process.argv.includes('--check')) {
  console.error('docs/probe.md is not current: run npx tsx apps/cli/src/probe/write-probe-page.ts');
  process.exitCode = 1;
} else {
  writeFileSync(file, text);
  console.log('wrote docs/probe.md');
}
