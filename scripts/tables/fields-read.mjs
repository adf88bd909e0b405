// Finds parameters whose field no model uses: assembled into a kind, hazard or role, and then never looked at.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const ownFields = {
  'servings-per-week.<month>': 'servingsPerWeekByMonth',
  'sow-from': 'sowFromDayOfYear',
  'sow-to': 'sowToDayOfYear',
  'harvest-from': 'harvestFromDayOfYear',
  'harvest-to': 'harvestToDayOfYear',
  'harvest.<harvest>.gate': 'startGate',
  'harvest.<harvest>.gate-juvenile-days': 'juvenileDays',
  'harvest.<harvest>.gate-cold-c-days': 'coldCDays',
  'harvest.<harvest>.gate-day-length-hours': 'dayLengthHours',
  'harvest.<harvest>.gate-after-days': 'afterDays',
};

export function fieldOf(parameter) {
  const last = parameter.split('.').at(-1);
  const camel = last.replace(/-([a-z0-9])/g, (_, letter) => letter.toUpperCase());
  return ownFields[parameter] ?? camel.replace('MjPer', 'MJPer');
}

function* sourceFiles(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) {
      if (!['node_modules', 'dist', 'generated', 'crops'].includes(entry.name)) yield* sourceFiles(path);
    } else if (/\.tsx?$/.test(entry.name) && !entry.name.includes('.test.')) yield path;
  }
}

export function fieldsNoModelReads({ parameters }) {
  const words = new Set();
  for (const folder of ['packages', 'apps', 'bench', 'truth'])
    for (const file of sourceFiles(folder))
      for (const word of readFileSync(file, 'utf8').match(/[A-Za-z][A-Za-z0-9]*/g) ?? []) words.add(word);
  return Object.values(parameters)
    .flatMap((specs) => Object.keys(specs))
    .map((parameter) => ({ parameter, field: fieldOf(parameter) }))
    .filter(({ field }) => !words.has(field));
}
