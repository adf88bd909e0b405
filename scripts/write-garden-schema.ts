// Writes docs/schema/garden.schema.json from the schema that reads garden files; --check: only says whether it is current.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { gardenJsonSchema } from '@twelvemonth/garden';

const file = new URL('../docs/schema/garden.schema.json', import.meta.url);
const wanted = gardenJsonSchema();
if (process.argv.includes('--check')) {
  if (!existsSync(file) || readFileSync(file, 'utf8') !== wanted) {
    console.error(
      'docs/schema/garden.schema.json is not current: run npx tsx scripts/write-garden-schema.ts',
    );
    process.exit(1);
  }
  console.log('docs/schema/garden.schema.json is current');
} else {
  writeFileSync(file, wanted);
  console.log(`wrote docs/schema/garden.schema.json, ${wanted.length} characters`);
}
