import type { z } from 'zod';
import { inputsOf } from './input-words.ts';
import { nearestName } from './nearest-name.ts';
import type { ProbeModel } from './probe-model.ts';

type Problem = z.core.$ZodIssue;

const shown = (value: unknown): string => {
  const text = JSON.stringify(value) ?? 'nothing';
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};

function valueAt(inputs: unknown, path: readonly PropertyKey[]): unknown {
  let value = inputs;
  for (const key of path) value = (value as Record<PropertyKey, unknown> | null | undefined)?.[key];
  return value;
}

const pathText = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (text, key) =>
      typeof key === 'number' ? `${text}[${key}]` : text === '' ? String(key) : `${text}.${String(key)}`,
    '',
  );

/** The first thing that the schema finds wrong, as a sentence: which input, what it is, what it may be. */
export function refusalOf(
  model: ProbeModel,
  inputs: unknown,
  problem: Problem,
): { input: string; sentence: string } {
  const known = inputsOf(model);
  if (problem.code === 'unrecognized_keys') {
    const key = problem.keys[0] ?? '';
    const path = pathText([...problem.path, key]);
    const nearest =
      problem.path.length === 0
        ? nearestName(
            key,
            known.map((input) => input.name),
          )
        : null;
    const perhaps = nearest === null ? '' : ` Was "${nearest}" meant?`;
    const names = known.map((input) => input.name).join(', ');
    return {
      input: path,
      sentence: `Input "${path}" is not known to ${model.name}.${perhaps} It takes: ${names}.`,
    };
  }
  const name = String(problem.path[0] ?? '');
  const input = known.find((one) => one.name === name);
  if (input === undefined)
    return {
      input: '',
      sentence: `The inputs of ${model.name} are one object, as ${JSON.stringify(model.example)}.`,
    };
  const at = pathText(problem.path);
  const value = valueAt(inputs, problem.path);
  const wanted = `${input.meaning}: ${input.takes}`;
  const sentence =
    value === undefined
      ? `Input "${at}" is missing. Give ${wanted}.`
      : `Input "${at}" cannot be ${shown(value)}. Give ${wanted}.`;
  return { input: at, sentence };
}
