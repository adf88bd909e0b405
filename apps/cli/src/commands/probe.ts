import type { Command } from 'commander';
import type { ProbeModel } from '../probe/probe-model.ts';
import { CliFailure } from '../run/cli-failure.ts';
import type { Terminal } from '../run/terminal.ts';
import { commandHelp, probeHelp } from '../words/help-words.ts';

interface ProbeOptions {
  readonly with?: string;
  readonly list?: boolean;
}

async function modelNamed(name: string): Promise<ProbeModel> {
  const { probeModels } = await import('../probe/all-models.ts');
  const found = probeModels.find((model) => model.name === name);
  if (found !== undefined) return found;
  const { nearestName } = await import('../probe/nearest-name.ts');
  const nearest = nearestName(
    name,
    probeModels.map((model) => model.name),
  );
  throw new CliFailure(probeHelp.unknownModel(name, nearest), 2);
}

function inputsIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new CliFailure(probeHelp.badJson(error instanceof Error ? error.message : ''), 1);
  }
}

async function runProbes(
  name: string | undefined,
  options: ProbeOptions,
  terminal: Terminal,
  exit: (code: number) => void,
): Promise<void> {
  if (options.list === true) {
    const { probeModels } = await import('../probe/all-models.ts');
    const { listText } = await import('../probe/list-text.ts');
    terminal.out(listText(name === undefined ? probeModels : [await modelNamed(name)]));
    return;
  }
  if (name === undefined) throw new CliFailure(probeHelp.noModel, 2);
  const model = await modelNamed(name);
  if (options.with === undefined)
    throw new CliFailure(probeHelp.noInputs(name, JSON.stringify(model.example)), 2);
  const inputs = inputsIn(options.with);
  const { runProbe } = await import('../probe/run-probe.ts');
  if (!Array.isArray(inputs)) {
    const result = runProbe(model, inputs);
    if (result.kind === 'refused') throw new CliFailure(`probe ${name}: ${result.sentence}`, 1);
    terminal.out(`${JSON.stringify(result.answer)}\n`);
    return;
  }
  let refused = 0;
  for (const one of inputs) {
    const result = runProbe(model, one);
    if (result.kind === 'refused') refused++;
    terminal.out(
      `${JSON.stringify(result.kind === 'answered' ? result.answer : { error: result.sentence, input: result.input })}\n`,
    );
  }
  if (refused === 0) return;
  terminal.say(probeHelp.refusedLines(refused, inputs.length));
  exit(1);
}

export function addProbe(program: Command, terminal: Terminal, exit: (code: number) => void): void {
  program
    .command('probe')
    .summary(commandHelp.probe.about)
    .description(commandHelp.probe.about)
    .argument('[model]', probeHelp.model)
    .option('--with <json>', probeHelp.with)
    .option('--list', probeHelp.list)
    .addHelpText('after', commandHelp.probe.example)
    .action((name: string | undefined, options: ProbeOptions) => runProbes(name, options, terminal, exit));
}
