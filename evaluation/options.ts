/** What may be asked of `npm run evaluate`; a wrong wish is a sentence that says how to mend it. */
import { parseArgs } from 'node:util';
import { dayFromIso } from '../packages/basis/src/index.ts';
import { nearestName } from '../packages/workflows/src/index.ts';
import { evaluationCases } from './cases.ts';
import { type CaseSettings, fullSettings, smallSettings } from './figures.ts';

export interface Wishes {
  readonly small: boolean;
  readonly json: boolean;
  readonly update: boolean;
  readonly names: readonly string[];
  readonly settings: CaseSettings;
  readonly date: string | null;
  /** Cases planned at the same time; a large one takes close to a gigabyte. */
  readonly atOnce: number;
}

export class WishRefused extends Error {}

export const helpText = `npm run evaluate -- [options]

Plans invented gardens and measures the plans beside two rival gardeners: docs/evaluation.md.

  --small          the small set, held against evaluation/small.json
  --case NAME      one case (may be given more than once)
  --json           figures as data
  --update         write the table and evaluation/results.json; with --small: evaluation/small.json
  --effort N       counted work allowed to the solver, in thousands of iterations (${fullSettings.effort}; small ${smallSettings.effort})
  --members N      members planned with (${fullSettings.memberCount}; small ${smallSettings.memberCount})
  --check N        members measured with (${fullSettings.checkMemberCount}; small ${smallSettings.checkMemberCount})
  --at-once N      cases planned at the same time (2)
  --first-plan     without the solver: quick, to look for weaknesses
  --date ISO       date on the table; left out: that of the last commit
`;

function wholeNumber(name: string, text: string | undefined, least: number, usual: number): number {
  if (text === undefined) return usual;
  const value = Number(text);
  if (Number.isInteger(value) && value >= least && value <= 100_000) return value;
  throw new WishRefused(
    `--${name} ${text}: a whole number from ${least} is needed, for instance --${name} ${usual}.`,
  );
}

function namesOf(wanted: readonly string[] | undefined, small: boolean): string[] {
  const known = evaluationCases.map((each) => each.name);
  if (wanted === undefined)
    return evaluationCases.filter((each) => !small || each.small).map((each) => each.name);
  for (const name of wanted) {
    if (known.includes(name)) continue;
    const near = nearestName(name, known);
    throw new WishRefused(
      `There is no case "${name}"${near === null ? '' : `; did you mean ${near}?`} Cases: ${known.join(', ')}.`,
    );
  }
  return known.filter((name) => wanted.includes(name));
}

/** null: help was wanted. */
export function readWishes(args: readonly string[]): Wishes | null {
  const { values } = (() => {
    try {
      return parseArgs({
        args: [...args],
        options: {
          small: { type: 'boolean', default: false },
          json: { type: 'boolean', default: false },
          update: { type: 'boolean', default: false },
          help: { type: 'boolean', default: false },
          case: { type: 'string', multiple: true },
          effort: { type: 'string' },
          members: { type: 'string' },
          check: { type: 'string' },
          'first-plan': { type: 'boolean', default: false },
          date: { type: 'string' },
          'at-once': { type: 'string' },
        },
      });
    } catch (error) {
      throw new WishRefused(
        `${error instanceof Error ? error.message : error} See npm run evaluate -- --help.`,
      );
    }
  })();
  if (values.help) return null;
  const usual = values.small ? smallSettings : fullSettings;
  const settings: CaseSettings = {
    effort: wholeNumber('effort', values.effort, 0, usual.effort),
    memberCount: wholeNumber('members', values.members, 1, usual.memberCount),
    checkMemberCount: wholeNumber('check', values.check, 1, usual.checkMemberCount),
    solver: !values['first-plan'],
  };
  const date = values.date ?? null;
  if (date !== null && dayFromIso(date) === null)
    throw new WishRefused(`--date ${date}: a day such as 2026-11-25 is needed.`);
  if (values.update && values.case !== undefined)
    throw new WishRefused('--update writes a whole table: leave --case out.');
  if (values.update && !settings.solver)
    throw new WishRefused('--update is for plans made with the solver: leave --first-plan out.');
  if (values.update && values.small && JSON.stringify(settings) !== JSON.stringify(smallSettings))
    throw new WishRefused(
      '--small --update keeps to the small settings: leave --effort, --members and --check out.',
    );
  return {
    small: values.small,
    json: values.json,
    update: values.update,
    names: namesOf(values.case, values.small),
    settings,
    date,
    atOnce: wholeNumber('at-once', values['at-once'], 1, 2),
  };
}
