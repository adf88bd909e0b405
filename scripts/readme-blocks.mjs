// Where the README's generated blocks come from. `needs` is the file without which a block cannot be made yet.
import { spawnSync } from 'node:child_process';

const cli = 'apps/cli/bin/twelvemonth.mjs';
const demo = 'examples/marram-end.jsonc';
const planLineCount = 60;

function said(root, args) {
  const run = spawnSync(process.execPath, args, {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    env: { ...process.env, NO_COLOR: '1', COLUMNS: '100' },
  });
  if (run.status !== 0) throw new Error(`node ${args.join(' ')} ended with ${run.status}\n${run.stderr}`);
  return run.stdout;
}

const asText = (text) => `\`\`\`text\n${text.trimEnd()}\n\`\`\``;
const withoutTrailingSpace = (text) => text.replace(/[ \t]+$/gm, '');

/** "  plan [options] <file>   sow what and when" becomes a row of a table. */
export function commandTable(help) {
  const after = help.split(/^Commands:$/m)[1] ?? '';
  const rows = [];
  for (const line of after.split('\n')) {
    const start = line.match(/^ {2}(\S.*?) {2,}(\S.*)$/);
    const onward = line.match(/^ {4,}(\S.*)$/);
    if (start) rows.push({ usage: start[1], what: start[2] });
    else if (onward && rows.length > 0) rows[rows.length - 1].what += ` ${onward[1]}`;
    else if (line.trim() !== '' && rows.length > 0) break;
  }
  const cell = (text) => text.replaceAll('|', '\\|');
  const lines = rows
    .filter((row) => !row.usage.startsWith('help'))
    .map((row) => `| \`twelvemonth ${cell(row.usage)}\` | ${cell(row.what)} |`);
  if (lines.length === 0) throw new Error('the help text lists no commands');
  return ['| command | what it does |', '|---|---|', ...lines].join('\n');
}

export const readmeBlocks = {
  commands: { needs: cli, make: (root) => commandTable(said(root, [cli, '--help'])) },
  plan: {
    needs: cli,
    make: (root) => {
      const lines = withoutTrailingSpace(said(root, [cli, 'plan', demo]))
        .trimEnd()
        .split('\n');
      const shown = lines.slice(0, planLineCount);
      const rest = lines.length - shown.length;
      return asText([...shown, ...(rest > 0 ? [`… and ${rest} lines more`] : [])].join('\n'));
    },
  },
  truth: {
    needs: 'truth/report.ts',
    make: (root) => said(root, ['--import', 'tsx', 'truth/report.ts', '--summary']),
  },
};
