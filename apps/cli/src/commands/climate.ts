import { plainSpaces } from '@twelvemonth/workflows';
import type { Command } from 'commander';
import { sayWarnings, soundGarden } from '../run/load-garden.ts';
import { planDefaults } from '../run/plan-defaults.ts';
import type { Terminal } from '../run/terminal.ts';
import { workflowFunction } from '../run/workflow-functions.ts';
import { climateText } from '../words/forecast-words.ts';
import { commandHelp, fileArgument } from '../words/help-words.ts';

async function runClimate(file: string, terminal: Terminal): Promise<void> {
  const { garden, daily, fromDay, warningsCount } = await soundGarden(file, null, terminal);
  const climateOfGarden = await workflowFunction('climateOfGarden');
  const { memberCount, seed } = planDefaults;
  const report = climateOfGarden(garden, { memberCount, seed, fromDay }, daily);
  terminal.out(plainSpaces(`${climateText(report).join('\n')}\n`));
  sayWarnings(warningsCount, file, terminal);
}

export function addClimate(program: Command, terminal: Terminal): void {
  program
    .command('climate')
    .summary(commandHelp.climate.about)
    .description(commandHelp.climate.about)
    .argument('<file>', fileArgument)
    .addHelpText('after', commandHelp.climate.example)
    .action((file: string) => runClimate(file, terminal));
}
