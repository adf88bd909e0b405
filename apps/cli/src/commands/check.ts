import type { Command } from 'commander';
import { readGarden } from '../run/load-garden.ts';
import type { Terminal } from '../run/terminal.ts';
import { commandHelp, fileArgument } from '../words/help-words.ts';
import { issueCountText, issueText } from '../words/issue-words.ts';

async function runCheck(file: string, terminal: Terminal): Promise<number> {
  const { findings } = await readGarden(file, null);
  for (const { file: where, issue } of findings) terminal.out(`${issueText(issue, where)}\n`);
  const issues = findings.map((finding) => finding.issue);
  terminal.out(`${file}: ${issueCountText(issues)}\n`);
  return issues.some((issue) => issue.severity === 'error') ? 1 : 0;
}

export function addCheck(program: Command, terminal: Terminal, exit: (code: number) => void): void {
  program
    .command('check')
    .summary(commandHelp.check.about)
    .description(commandHelp.check.about)
    .argument('<file>', fileArgument)
    .addHelpText('after', commandHelp.check.example)
    .action(async (file: string) => exit(await runCheck(file, terminal)));
}
