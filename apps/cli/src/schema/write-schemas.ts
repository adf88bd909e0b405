// Writes docs/schema/{plan,forecast}.schema.json; --check: only says whether they are current.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { schemaTexts } from './schema-texts.ts';

const check = process.argv.includes('--check');
for (const [name, text] of Object.entries(schemaTexts())) {
  const file = new URL(`../../../../docs/schema/${name}`, import.meta.url);
  const current = existsSync(file) && readFileSync(file, 'utf8') === text;
  if (current) console.log(`docs/schema/${name} is current`);
  else if (check) {
    console.error(`docs/schema/${name} is not current: run npx tsx apps/cli/src/schema/write-schemas.ts`);
    process.exitCode = 1;
  } else {
    writeFileSync(file, text);
    console.log(`wrote docs/schema/${name}`);
  }
}
