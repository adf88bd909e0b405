import { type ProbeAnswer, type ProbeModel, ProbeRefusal, rounded } from './probe-model.ts';
import { refusalOf } from './refusal-words.ts';

/** An answer, or which input is wrong and how to mend it. */
export type ProbeResult =
  | { readonly kind: 'answered'; readonly answer: ProbeAnswer }
  | { readonly kind: 'refused'; readonly input: string; readonly sentence: string };

export function runProbe(model: ProbeModel, inputs: unknown): ProbeResult {
  const parsed = model.inputs.safeParse(inputs);
  if (!parsed.success) return { kind: 'refused', ...refusalOf(model, inputs, parsed.error.issues[0]!) };
  try {
    return { kind: 'answered', answer: rounded(model.answer(parsed.data)) as ProbeAnswer };
  } catch (error) {
    if (error instanceof ProbeRefusal)
      return { kind: 'refused', input: error.input, sentence: error.message };
    throw error;
  }
}
