import type { Command } from 'commander';
import { planPathOf, readStoredPlan } from '../run/stored-plan.ts';
import type { Terminal } from '../run/terminal.ts';
import { workflowFunction } from '../run/workflow-functions.ts';
import { commandHelp, optionHelp, planArgument } from '../words/help-words.ts';

async function runCompare(
  before: string,
  after: string,
  flags: { readonly json?: true },
  terminal: Terminal,
): Promise<void> {
  const [a, b] = [await readStoredPlan(planPathOf(before)), await readStoredPlan(planPathOf(after))];
  const comparePlans = await workflowFunction('comparePlans');
  const comparison = comparePlans(a, b);
  if (flags.json === true) terminal.out(`${JSON.stringify(comparison, null, 2)}\n`);
  else {
    const { comparisonText } = await import('../words/comparison-words.ts');
    terminal.out(comparisonText(comparison));
  }
}

export function addCompare(program: Command, terminal: Terminal): void {
  program
    .command('compare')
    .summary(commandHelp.compare.about)
    .description(commandHelp.compare.about)
    .argument('<before>', planArgument)
    .argument('<after>', planArgument)
    .option('--json', optionHelp.json)
    .addHelpText('after', commandHelp.compare.example)
    .action((before: string, after: string, flags: { json?: true }) =>
      runCompare(before, after, flags, terminal),
    );
}
