/** Figures against what was frozen: one line for each that is off, missing or not expected. */
import type { Figures } from './plan-figures.ts';

/** `tolerance`: how far either way the figure may move, in the figure's own unit. 0: exactly. */
export interface ExpectedFigure {
  readonly value: number;
  readonly tolerance: number;
}

export type ExpectedFigures = Readonly<Record<string, ExpectedFigure>>;

const rounding = 1e-9;

export function compareFigures(expected: ExpectedFigures, found: Figures): string[] {
  const off = Object.entries(expected).flatMap(([name, { value, tolerance }]) => {
    const now = found[name];
    if (now === undefined) return [`${name}: missing, expected ${value}`];
    const near = Math.abs(now - value) <= tolerance + rounding;
    return near ? [] : [`${name}: ${now}, expected ${value} ± ${tolerance}`];
  });
  const more = Object.keys(found).filter((name) => !(name in expected));
  return [...off, ...more.map((name) => `${name}: ${found[name]}, not expected`)];
}
