import type { KnownNames, ParameterSpec, ParameterSpecs } from './table-types.ts';

export interface FoundSpec {
  readonly spec: ParameterSpec;
  /** The name in the list, with its placeholders: `harvest.<harvest>.role`. */
  readonly pattern: string;
  /** What stands at each placeholder: `{ harvest: 'leaves' }`. */
  readonly filled: Readonly<Record<string, string>>;
}

function fillPattern(pattern: string, parameter: string): Record<string, string> | null {
  const wanted = pattern.split('.');
  const given = parameter.split('.');
  if (wanted.length !== given.length) return null;
  const filled: Record<string, string> = {};
  for (const [i, part] of wanted.entries()) {
    const here = given[i] ?? '';
    if (part.startsWith('<')) {
      if (here === '') return null;
      filled[part.slice(1, -1)] = here;
    } else if (part !== here) return null;
  }
  return filled;
}

/** Finds what is known of a parameter; `harvest.leaves.role` matches `harvest.<harvest>.role`. */
export function specFor(specs: ParameterSpecs, parameter: string): FoundSpec | null {
  const plain = specs[parameter];
  if (plain !== undefined) return { spec: plain, pattern: parameter, filled: {} };
  for (const [pattern, spec] of Object.entries(specs)) {
    if (!pattern.includes('<')) continue;
    const filled = fillPattern(pattern, parameter);
    if (filled !== null) return { spec, pattern, filled };
  }
  return null;
}

/** `harvest.<harvest>.gate` with `{ harvest: 'top' }` is `harvest.top.gate`. */
export function withFilled(pattern: string, filled: Readonly<Record<string, string>>): string {
  return pattern.replace(/<([a-z-]+)>/g, (_, name: string) => filled[name] ?? `<${name}>`);
}

export const valuesOf = (text: string): string[] => text.split('|').map((v) => v.trim());

export type ValueFault =
  | { readonly fault: 'not-a-number' }
  | { readonly fault: 'outside-plausible'; readonly low: number; readonly high: number }
  | { readonly fault: 'not-allowed'; readonly value: string; readonly allowed: string };

/** What is wrong with one value, or null. Names without a closed list (crops, harvests) are checked elsewhere. */
export function faultOfValue(found: FoundSpec, text: string, names: KnownNames): ValueFault | null {
  const { spec } = found;
  if (spec.unit !== 'text') {
    const value = Number(text);
    if (text.trim() === '' || !Number.isFinite(value)) return { fault: 'not-a-number' };
    const { low = -Infinity, high = Infinity } = spec;
    return value < low || value > high ? { fault: 'outside-plausible', low, high } : null;
  }
  const allowed = spec.oneOf ?? (spec.refers === undefined ? undefined : names[spec.refers]);
  if (allowed === undefined) return null;
  const values = spec.many === true ? valuesOf(text) : [text];
  const stranger = values.find((v) => !allowed.includes(v));
  return stranger === undefined
    ? null
    : { fault: 'not-allowed', value: stranger, allowed: allowed.join(', ') };
}
