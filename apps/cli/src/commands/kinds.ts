import type { Command } from 'commander';
import { soundGarden } from '../run/load-garden.ts';
import type { Terminal } from '../run/terminal.ts';
import { unknownKind } from '../run/unknown-kind.ts';
import { workflowFunction } from '../run/workflow-functions.ts';
import { commandHelp, kindArgument, optionHelp } from '../words/help-words.ts';
import { kindLines, kindsLines } from '../words/kind-words.ts';

interface KindsFlags {
  readonly garden?: string;
}

async function runKinds(id: string | undefined, flags: KindsFlags, terminal: Terminal): Promise<void> {
  const { allKinds, allRoles, kindById, sourceById, tableRowsOf } = await catalogue();
  const garden = flags.garden === undefined ? null : (await soundGarden(flags.garden, null, terminal)).garden;
  const [kindOf, kindsOf, ownRowsOf] = await Promise.all([
    workflowFunction('kindOf'),
    workflowFunction('kindsOf'),
    workflowFunction('ownRowsOf'),
  ]);
  const roleNames = new Map(allRoles().map((role) => [role.id as string, role.name]));
  if (id === undefined) {
    terminal.out(`${kindsLines(garden === null ? allKinds() : kindsOf(garden), roleNames).join('\n')}\n`);
    return;
  }
  const kind = garden === null ? kindById(id) : kindOf(garden, id);
  if (kind === undefined) throw unknownKind(id);
  const rows = (garden === null ? undefined : ownRowsOf(garden, id)) ?? tableRowsOf(id);
  terminal.out(`${kindLines(kind, rows, sourceById, roleNames).join('\n')}\n`);
}

const catalogue = () => import('@twelvemonth/growing');

export function addKinds(program: Command, terminal: Terminal): void {
  program
    .command('kinds')
    .summary(commandHelp.kinds.about)
    .description(commandHelp.kinds.about)
    .argument('[id]', kindArgument)
    .option('--garden <file>', optionHelp.ownKindsOf)
    .addHelpText('after', commandHelp.kinds.example)
    .action((id: string | undefined, flags: KindsFlags) => runKinds(id, flags, terminal));
}
