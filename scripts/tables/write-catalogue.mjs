// The compiled tables as a TypeScript module: rows grouped by subject, in the order of the files.
const order = ['role', 'hazard', 'family-rest', 'calendar', '*', 'family', 'crop', 'kind'];
const rank = (subject) => order.indexOf(subject === '*' ? '*' : subject.split(':')[0]);

/** `model` names the page of docs/models that explains what reads the parameter. */
function tidySpec({ unit, readBy, meaning: _, ...spec }, modelPages) {
  const model = modelPages?.[readBy] ?? '';
  return { unit, ...spec, ...(model === '' ? {} : { model }) };
}

export function catalogueText({ kindIds, rowsBySubject, rules, sources }) {
  const subjects = Object.keys(rowsBySubject).sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1));
  const lines = [
    '// Written by scripts/compile-tables.mjs from packages/growing/tables: change the tables, not this file.',
    "import type { CompiledTables } from '../crops/table-types.ts';",
    '',
    'const compiled: CompiledTables = {',
    `kindIds: ${JSON.stringify(kindIds)},`,
    'rowsBySubject: {',
  ];
  for (const subject of subjects) {
    lines.push(`${JSON.stringify(subject)}: [`);
    for (const row of rowsBySubject[subject]) lines.push(`${JSON.stringify(row)},`);
    lines.push('],');
  }
  lines.push('},', 'parameters: {');
  for (const [sort, specs] of Object.entries(rules.parameters)) {
    lines.push(`${JSON.stringify(sort)}: {`);
    for (const [name, spec] of Object.entries(specs))
      lines.push(`${JSON.stringify(name)}: ${JSON.stringify(tidySpec(spec, rules.modelPages))},`);
    lines.push('},');
  }
  lines.push('},', `names: ${JSON.stringify(rules.names)},`, 'sources: [');
  for (const [id, { entry }] of sources) lines.push(`${JSON.stringify({ id, ...entry })},`);
  lines.push('],', '};', '', 'export const tables: CompiledTables = Object.freeze(compiled);', '');
  return lines.join('\n');
}
