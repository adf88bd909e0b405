import { isoFromDay } from '@twelvemonth/basis';
import type { IssueSentence, SentenceOf } from './garden-issue-sentences.ts';

const say = (wrong: string, mend: string): IssueSentence => ({ wrong, mend });
const perhaps = (nearest: string | number | undefined): string =>
  nearest === undefined || nearest === '' ? '' : ` Was "${nearest}" meant?`;

/** Daily weather files. `where` is a line of that file. */
export const dailyIssueSentences: Readonly<Record<string, SentenceOf>> = {
  'daily-no-header': () =>
    say(
      'The weather file has no header line.',
      'Begin it with: date,tmax,tmin,rain (radiation or sunshine if known).',
    ),
  'daily-column-missing': (d) =>
    say(`The column "${d.column}" is missing.`, 'Add it to the header and to every line.'),
  'daily-no-rows': () => say('The weather file has no days in it.', 'Add one line a day.'),
  'daily-too-many-lines': (d) =>
    say(`The weather file has more than ${d.most} lines.`, 'Leave out the oldest years.'),
  'daily-line-too-long': (d) =>
    say(`The line has ${d.length} characters and is passed over.`, 'Look whether the line breaks got lost.'),
  'daily-bad-date': (d) => say(`"${d.text}" is not a day; the line is passed over.`, 'Write 2024-03-31.'),
  'daily-bad-number': (d) =>
    say(`"${d.text}" in ${d.column} is not a number; it is bridged.`, 'Correct it, or leave the cell empty.'),
  'daily-impossible-value': (d) =>
    say(`${d.value} in ${d.column} cannot be; it is bridged.`, 'Correct it, or leave the cell empty.'),
  'daily-tmax-below-tmin': (d) =>
    say(
      `The maximum (${d.tmaxC} °C) lies below the minimum (${d.tminC} °C); both are bridged.`,
      'Swap or correct them.',
    ),
  'daily-duplicate-day': (d) =>
    say(
      `${typeof d.day === 'number' ? isoFromDay(d.day) : d.day} stands twice; the first line counts.`,
      'Take one of the lines out.',
    ),
  'daily-unsorted': () => say('The days are not in order; they were sorted.', 'Nothing needs to be done.'),
  'daily-short-gap-bridged': (d) =>
    say(`${d.days} days of ${d.column} are missing and were bridged.`, 'Fill them in if you can.'),
  'daily-long-gap': (d) =>
    say(
      `${d.days} days of ${d.column} are missing in a row.`,
      'Fill the gap from another station, or cut the file there.',
    ),
  'daily-radiation-estimated': (d) =>
    say(
      `Radiation was estimated on ${d.days} of ${d.of} days.`,
      'Add a column of radiation or sunshine if you have one.',
    ),
  'daily-span-impossible': (d) => say(`The file spans ${d.days} days.`, 'Look for a mistyped year.'),
  'daily-record-short': (d) =>
    say(
      `The record holds ${d.days} days, too few to tell one year from another.`,
      'Give two years at least, better ten; or name a station as the climate.',
    ),
  'daily-more-of-the-same': (d) =>
    say(`${d.count} more lines like this are not listed.`, 'Mend the ones above and check again.'),
};

/** What is checked against the catalogue, and what the command line itself finds. */
export const workflowIssueSentences: Readonly<Record<string, SentenceOf>> = {
  'kind-unknown': (d) =>
    say(
      `There is no kind "${d.found ?? d.kind}".${perhaps(d.nearest)}`,
      'Run "twelvemonth kinds" for the list.',
    ),
  'role-unknown': (d) =>
    say(
      `There is no kitchen role "${d.found ?? d.role}".${perhaps(d.nearest)}`,
      'Run "twelvemonth kinds" to see the roles.',
    ),
  'store-unknown': (d) =>
    say(
      `There is no place of keeping "${d.found ?? d.store}".${perhaps(d.nearest)}`,
      'Use dry, cool-damp, frost-free, sand, fridge, freezer or jar.',
    ),
  'station-unknown': (d) =>
    say(
      `There is no station "${d.found ?? d.station}".${perhaps(d.nearest)}`,
      `Use one of: ${d.allowed ?? 'the stations in docs/data-sources.md'}.`,
    ),
  'bed-over-full': (d) =>
    say(
      `What stands in "${d.place}" needs ${d.groundM2} m², but it has ${d.placeM2} m².`,
      'Correct the counts, or give groundM2 for the crops that stand closer.',
    ),
  'kind-not-for-place': (d) => say(`${d.kind} does not grow in "${d.place}".`, 'Name another place.'),
  'sown-before-free': (d) =>
    say(
      `"${d.place}" is not free on ${d.sow}: ${d.by ?? 'another crop'} stands there until ${d.until}.`,
      'Sow later, clear earlier (mayClearFrom), or name another place.',
    ),
  'weather-file-missing': (d) =>
    say(
      `The weather file ${d.path} cannot be read (${d.problem}).`,
      'Put it beside the garden file, or name a station as the climate.',
    ),
};
