import type { Command } from 'commander';
import { optionHelp } from '../words/help-words.ts';
import { secondsOption, wholeOption } from './option-values.ts';
import { planDefaults } from './plan-defaults.ts';

/** How far, on how many weather runs and for how long a plan is searched. */
export const withPlanSize = (command: Command): Command =>
  command
    .option('--weeks <n>', optionHelp.weeks, wholeOption(4, 208), planDefaults.weeks)
    .option('--members <n>', optionHelp.members, wholeOption(4, 200), planDefaults.memberCount)
    .option('--seed <n>', optionHelp.seed, wholeOption(0, 2_147_483_647), planDefaults.seed)
    .option('--effort <n>', optionHelp.effort, wholeOption(0, 1_000_000), planDefaults.effort)
    .option('--time <seconds>', optionHelp.time, secondsOption);
