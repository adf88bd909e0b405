import type { Command } from 'commander';
import type { Terminal } from '../run/terminal.ts';
import { unknownKind } from '../run/unknown-kind.ts';
import { commandHelp, kindArgument } from '../words/help-words.ts';
import { kindLines, kindsLines } from '../words/kind-words.ts';

async function runKinds(id: string | undefined, terminal: Terminal): Promise<void> {
  const { allKinds, allRoles, kindById, sourceById, tableRowsOf } = await catalogue();
  const roleNames = new Map(allRoles().map((role) => [role.id as string, role.name]));
  if (id === undefined) {
    terminal.out(`${kindsLines(allKinds(), roleNames).join('\n')}\n`);
    return;
  }
  const kind = kindById(id);
  if (kind === undefined) throw unknownKind(id);
  terminal.out(`${kindLines(kind, tableRowsOf(id), sourceById, roleNames).join('\n')}\n`);
}

const catalogue = () => import('@twelvemonth/growing');

export function addKinds(program: Command, terminal: Terminal): void {
  program
    .command('kinds')
    .summary(commandHelp.kinds.about)
    .description(commandHelp.kinds.about)
    .argument('[id]', kindArgument)
    .addHelpText('after', commandHelp.kinds.example)
    .action((id: string | undefined) => runKinds(id, terminal));
}
