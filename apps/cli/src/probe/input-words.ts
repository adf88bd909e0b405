import { z } from 'zod';
import type { ProbeModel } from './probe-model.ts';

/** One input as the schema has it, in words: type, range, choices, what holds when it is left out. */
export interface InputWords {
  readonly name: string;
  readonly meaning: string;
  readonly takes: string;
  readonly needed: boolean;
  readonly otherwise: string | null;
}

interface Described {
  readonly type?: string;
  readonly description?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly enum?: readonly string[];
  readonly default?: unknown;
  readonly items?: Described;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly anyOf?: readonly Described[];
  readonly format?: string;
  readonly properties?: Readonly<Record<string, Described>>;
}

const figure = (value: number): string => String(value).replace('-', '−');

/** What an input may be, from its schema. */
function takesOf(input: Described): string {
  if (input.anyOf !== undefined) return input.anyOf.map(takesOf).join(', or ');
  if (input.enum !== undefined) return input.enum.join(' | ');
  if (input.type === 'array') {
    const { minItems: least = 0, maxItems: most = 0 } = input;
    return `${least === most ? least : `${least} to ${most}`} values, each ${takesOf(input.items ?? {})}`;
  }
  if (input.type === 'boolean') return 'true | false';
  if (input.type === 'object')
    return `an object of ${Object.entries(input.properties ?? {})
      .map(([name, inner]) => `${name} (${inner.description}; ${takesOf(inner)})`)
      .join(', ')}`;
  if (input.format === 'date') return 'a date';
  if (input.type === 'string') return 'a text';
  const sort = input.type === 'integer' ? 'a whole number' : 'a number';
  return input.minimum === undefined || input.maximum === undefined
    ? sort
    : `${sort} from ${figure(input.minimum)} to ${figure(input.maximum)}`;
}

export function inputsOf(model: ProbeModel): InputWords[] {
  const schema = z.toJSONSchema(model.inputs, { io: 'input' }) as {
    readonly properties?: Readonly<Record<string, Described>>;
    readonly required?: readonly string[];
  };
  return Object.entries(schema.properties ?? {}).map(([name, input]) => ({
    name,
    meaning: input.description ?? '',
    takes: takesOf(input),
    needed: schema.required?.includes(name) ?? false,
    otherwise: input.default === undefined ? null : JSON.stringify(input.default),
  }));
}
