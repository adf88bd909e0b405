/** What `what-if --help` says. */
export const whatIfHelp = {
  about:
    'what a lost sowing, a torn cover, a late spring or a dry May would cost, and what can still be done',
  example: `
Example:
  $ twelvemonth what-if examples/marram-end.jsonc --lose 12
  $ twelvemonth what-if examples/marram-end.jsonc --cover tunnel --on 2027-01-10 --weather late-spring

The plan is the plan.json given with --plan, or one beside the file that is newer than it;
otherwise one is made first.`,
  lose: 'this sowing is lost: its number on the sheets, or its id',
  cover: 'this cover is torn: its id or its name in the file',
  weather:
    'the weather of the coldest fifth of springs (late-spring) or of the driest fifth of Mays (dry-may)',
  on: 'day of the loss or the gale (default: when it would first be eaten; the middle of the windiest month)',
  members: 'weather runs to live it in (default: 30, with --weather 60)',
  plan: 'plan to ask about (default: plan.json beside the file if it is newer)',
} as const;
