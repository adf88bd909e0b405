import type { z } from 'zod';

/** One question that can be put to the engine: inputs as a schema, outputs in words, a pure answer. */
export interface ProbeModel {
  readonly name: string;
  readonly about: string;
  readonly inputs: z.ZodObject;
  /** Meaning and unit of each output, by name. */
  readonly outputs: Readonly<Record<string, string>>;
  /** Inputs that are answered, for the list and the page. */
  readonly example: Readonly<Record<string, unknown>>;
  answer(inputs: unknown): ProbeAnswer;
}

export type ProbeAnswer = Readonly<Record<string, unknown>>;

export function probeModel<Inputs extends z.ZodObject>(model: {
  readonly name: string;
  readonly about: string;
  readonly inputs: Inputs;
  readonly outputs: Readonly<Record<string, string>>;
  readonly example: z.input<Inputs>;
  answer(inputs: z.output<Inputs>): ProbeAnswer;
}): ProbeModel {
  return { ...model, answer: (inputs) => model.answer(inputs as z.output<Inputs>) };
}

/** Inputs that are each possible but not together, or name what is not there: said in a sentence with the remedy. */
export class ProbeRefusal extends Error {
  readonly input: string;
  constructor(input: string, sentence: string) {
    super(sentence);
    this.input = input;
  }
}

const significantDigits = 6;

/** Figures as they are printed: six significant digits, whole numbers as they are. */
export function rounded(value: unknown): unknown {
  if (typeof value === 'number')
    return Number.isInteger(value) ? value : Number(value.toPrecision(significantDigits));
  if (Array.isArray(value)) return value.map(rounded);
  if (ArrayBuffer.isView(value)) return rounded(Array.from(value as unknown as ArrayLike<number>));
  if (value !== null && typeof value === 'object')
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)]));
  return value;
}

export const toDecimals = (value: number, decimals: number): number => Number(value.toFixed(decimals));
