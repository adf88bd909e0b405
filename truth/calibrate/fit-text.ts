import { constantId } from './constant.ts';
import type { Fit } from './fit-constants.ts';
import { isChanged, roundedValue } from './proposal.ts';

const places = (value: number): string => (Math.abs(value) >= 100 ? value.toFixed(0) : value.toFixed(2));

/** A fit for people: what would change, on what evidence, and what every row says before and after. */
export function fitLines(fit: Fit): string[] {
  const proposals = fit.fitted.map((fitted) => {
    const { constant, value, evidence } = fitted;
    const to = isChanged(fitted)
      ? `${roundedValue(constant.value)} to ${roundedValue(value)}`
      : `stays at ${roundedValue(value)}`;
    return `  ${constantId(constant)}: ${to} ${constant.unit} (range ${constant.low} to ${constant.high}; ${evidence.length} rows)`;
  });
  const alone = fit.leftAlone.map(
    ({ constant, evidence }) =>
      `  ${constantId(constant)}: left alone, ${evidence.length} rows respond to it`,
  );
  const rows = fit.answers.map(
    ({ id, expected, before, after }) =>
      `    ${id}: ${places(expected)} published, ${places(before)} before, ${places(after)} after`,
  );
  return [
    `${fit.problem}: misfit ${fit.misfitBefore.toFixed(2)} to ${fit.misfitAfter.toFixed(2)} standard deviations over ${fit.answers.length} rows`,
    ...proposals,
    ...alone,
    ...rows,
  ];
}
