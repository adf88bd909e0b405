/** What --help says: for somebody who has never seen the program. */

export const programHelp = {
  about:
    'Eat your own vegetables every week of the year: from a garden file, what to sow now, how much, where, and what there will be to eat.',
  start: `
Start here:
  $ twelvemonth check examples/marram-end.jsonc     is the file all right?
  $ twelvemonth plan examples/marram-end.jsonc      the year, this month's sheet, what falls short

Exit codes: 0 all right, 1 errors in the file or the run, 2 wrong use of a command.`,
};

const example = (lines: string): string => `\nExample:\n${lines}`;

export const commandHelp = {
  plan: {
    about: 'choose the sowings for a garden and show the year, the next sheets, shortages and the proof',
    example: example(
      `  $ twelvemonth plan examples/marram-end.jsonc --from 2026-08-20 --out winter\n  writes winter/plan.json, the month sheets, dark-months.html, fridge.html, seeds.csv, jobs.ics and year.svg.\n\nCtrl-C once: stop and show the best plan so far. Twice: give up.`,
    ),
  },
  replan: {
    about:
      'plan again from a day: keep what was begun and promised, move little, and show the difference first',
    example: example(
      `  $ twelvemonth replan examples/marram-end.jsonc --from 2026-10-01 --plan winter --out autumn\n\nSowings of the last plan whose day has passed are taken as begun as planned, unless the garden file has the crop under standing or --not-begun names them. Weeks, weather runs and seed are those of the last plan.`,
    ),
  },
  compare: {
    about:
      'two plans side by side: what was added, moved and dropped, and what that gains and loses at table',
    example: example(
      '  $ twelvemonth compare summer/plan.json autumn/plan.json\n  $ twelvemonth compare summer autumn --json\n\nPlans are the plan.json that "plan --out" writes, or folders that hold one.',
    ),
  },
  forecast: {
    about: 'what one sowing would give, and how sure that is',
    example: example(
      '  $ twelvemonth forecast examples/marram-end.jsonc --kind leek --sow 2027-03-20 --count 60',
    ),
  },
  explain: {
    about:
      'why a sowing is in the plan and what a delay does; or what a week brings to the table, and what would mend it',
    example: example(
      `  $ twelvemonth explain examples/marram-end.jsonc 12\n  $ twelvemonth explain examples/marram-end.jsonc leek\n  $ twelvemonth explain examples/marram-end.jsonc 2027-02-08 --role salad-leaves\n\nA plan.json given with --plan, or one beside the garden file that is newer than it, is used; otherwise a plan is made first.`,
    ),
  },
  slots: {
    about: 'where and when one more sowing of a kind would fit, and what it would fill on the table',
    example: example(
      `  $ twelvemonth slots examples/marram-end.jsonc --kind lambs-lettuce\n  $ twelvemonth slots examples/marram-end.jsonc --kind carrot-early --count 200 --plan winter/plan.json\n\nBeside the plan given with --plan, or the one beside the garden file; without any, beside what stands.`,
    ),
  },
  sheet: {
    about: "print a sheet: a month's work, the dark months counted back, or this week's fridge page",
    example: example(
      `  $ twelvemonth sheet examples/marram-end.jsonc --month 2026-09 --format html --out september.html\n  $ twelvemonth sheet examples/marram-end.jsonc --fridge 2026-08-24\n\nA plan.json given with --plan, or one beside the garden file that is newer than it, is used; otherwise a plan is made first.`,
    ),
  },
  check: {
    about: 'every finding in a garden file, with its place and remedy',
    example: example('  $ twelvemonth check examples/broken/impossible-date.jsonc'),
  },
  climate: {
    about: "the site's year: light, warmth, frost, standstill, each place beside the uncovered ground",
    example: example('  $ twelvemonth climate examples/marram-end.jsonc'),
  },
  kinds: {
    about: 'the catalogue; with an id every value of that kind and its source',
    example: example('  $ twelvemonth kinds\n  $ twelvemonth kinds leek'),
  },
  seeds: {
    about: 'what to buy for the plan, in whole packets, with order-by dates',
    example: example('  $ twelvemonth seeds examples/marram-end.jsonc'),
  },
  probe: {
    about: 'ask one model of the engine: inputs as JSON, the answer as a line of JSON',
    example: example(
      `  $ twelvemonth probe --list\n  $ twelvemonth probe day-length --with '{"latitudeDeg":54.6,"dayOfYear":15,"horizonDeg":0.8333}'\n  $ twelvemonth probe emergence --with '[{"kind":"leek","constantC":10},{"kind":"leek","constantC":15}]'\n\nAn array of inputs gives a line each; a line that cannot be answered says why, and the command ends with 1.`,
    ),
  },
  truth: {
    about: 'measure the engine against published values and print the errors',
    example: example('  $ twelvemonth truth\n  $ twelvemonth truth --json'),
  },
} as const;

export const optionHelp = {
  from: 'first day of the plan, as 2026-08-20 (default: planFrom of the file, else today)',
  replanFrom: 'first day of the new plan, as 2026-10-01 (default: today)',
  lastPlan: 'the plan so far, or the folder that holds it (default: plan.json beside the file)',
  notBegun: 'sowings of the last plan that were not begun, by number or id: 12,15',
  replanJson: 'print JSON and nothing else: difference and plan',
  weeks: 'weeks to show',
  members: 'weather runs to plan with',
  seed: 'number that draws the weather: the same seed gives the same plan',
  effort: 'work allowed for the search, in thousands of counted steps',
  time: 'safety net: stop the search after so many seconds (such a plan may differ from run to run)',
  outDir: 'write plan, sheets, list of seeds, calendar and picture into this folder',
  json: 'print JSON and nothing else',
  progress: 'show progress even when the output is not a terminal',
  ownKindsOf: 'with the own kinds of this garden file',
  kind: 'kind to sow (see: twelvemonth kinds)',
  sow: 'day of sowing or planting, as 2027-03-20',
  route: 'how it is raised (default: the usual way): stages as mat,sill,frame,bed, or one of',
  place: 'id of a place in the file (default: the first that suits)',
  count: 'plants to set out or thin to (default: what a square metre or a tub carries)',
  month: 'month of the sheet, as 2026-09 (default: this month)',
  dark: 'the dark months instead: what must be sown by when, to eat from midwinter into spring',
  fridge: 'the fridge page instead, for the week of this day',
  neighbour: 'with --fridge: the page for whoever waters',
  format: 'how it is laid out',
  seedFormat: 'how it is laid out',
  plan: 'plan to print from (default: plan.json beside the file if it is newer)',
  planToArgue: 'plan to argue with (default: plan.json beside the file if it is newer)',
  role: 'with a week: this kitchen role only, as salad-leaves',
  slotPlants: 'plants wanted (default: as many as are still well used)',
  slotMost: 'how many slots to show',
  todayArgue:
    'the day to look from: what should have begun before it is too late (default: first day of the plan)',
  outFile: 'write to this file instead of the screen',
  today: 'the day to print for (default: today, or the first day of the plan if today lies outside it)',
} as const;

export const probeHelp = {
  model: 'what is asked, as --list names it',
  with: 'inputs as JSON: an object, or an array of them for a line each',
  list: 'print every model (or the one named) with inputs, units and outputs',
  noModel: 'Which model? Run "twelvemonth probe --list" for all of them.',
  noInputs: (name: string, example: string): string =>
    `probe ${name} needs its inputs: --with '${example}'. Run "twelvemonth probe ${name} --list" for what it takes.`,
  unknownModel: (name: string, nearest: string | null): string =>
    `There is no model "${name}".${nearest === null ? '' : ` Was "${nearest}" meant?`} Run "twelvemonth probe --list" for all of them.`,
  badJson: (problem: string): string =>
    `What stands behind --with is not JSON (${problem}). Write it in single quotes, as --with '{"latitudeDeg":54.6,"dayOfYear":15}'.`,
  refusedLines: (refused: number, all: number): string =>
    `${refused} of ${all} inputs could not be answered; their lines say why.`,
} as const;

export const fileArgument = 'the garden file (JSON with comments)';
export const planArgument = 'a plan.json, or a folder that holds one';
export const explainWhat =
  'a sowing by its id, the number on its label or its kind; or a week by one of its days, as 2027-02-08';
export const noSuchSowingText = (what: string, nearest: string, first: number, last: number): string =>
  `There is no sowing "${what}" in this plan.${nearest === '' ? '' : ` Was "${nearest}" meant?`} Give an id, a kind, a number on a label (${first} to ${last}), or a day as 2027-02-08 for its week.`;
export const roleNeedsWeek =
  'A role goes with a week: name a day of it, as explain FILE 2027-02-08 --role salad-leaves.';
export const noSuchRoleText = (
  text: string,
  known: boolean,
  nearest: string,
  eaten: readonly string[],
): string =>
  known
    ? `Nobody in this household eats "${text}". Its roles are: ${eaten.join(', ')}.`
    : `There is no kitchen role "${text}".${nearest === '' ? '' : ` Was "${nearest}" meant?`} This household's are: ${eaten.join(', ')}.`;
export const standsForYearsText = (kindName: string): string =>
  `${kindName} stands for years: it is planted once, under "standing", and not sown anew by the plan.`;
export const emptyPlanText =
  'There is no sowing in this plan, and nothing stands. Give a day as 2027-02-08 for its week, or ask twelvemonth slots where a kind would fit.';
export const notInFileText = (id: string): string =>
  `The plan has ${id}, but the garden file no longer has its kind, its place or what it is raised on. Plan again: twelvemonth plan FILE --out DIR`;
export const kindArgument = 'a kind, as "twelvemonth kinds" lists it';
export const routes = ['direct', 'planted', 'module', 'warm', 'tray'] as const;

export const unknownKindText = (id: string, nearest: string): string =>
  `There is no kind "${id}".${nearest === '' ? '' : ` Was "${nearest}" meant?`} Run "twelvemonth kinds" for the list.`;
export const icsForMonthsOnly =
  'A calendar (--format ics) can be made of a month only: use --month, or text, html or csv for this sheet.';
export const neighbourNeedsWeek =
  'The page for whoever waters is made for a week: give --fridge with a day of it, as --fridge 2026-08-24.';
export const outsidePlanText = (firstWeek: string, lastWeek: string): string =>
  `That lies outside the plan, whose weeks begin between ${firstWeek} and ${lastWeek}. Ask for a time within it, or plan more --weeks.`;
export const truthIsElsewhere =
  'The report that measures the engine lives in the repository (truth/report.ts) and is not here. In a checkout, run: npm run truth';
export const brokenText = (message: string): string =>
  `Something in the program itself went wrong: ${message}. Nothing was written. Set TWELVEMONTH_DEBUG=1 to see where.`;
