import { isoFromDay } from '@twelvemonth/basis';
import type { WorkflowIssueCode } from '@twelvemonth/workflows';
import type { IssueSentence, SentenceOf } from './garden-issue-sentences.ts';
import { growsInWord, plainCode, stageWord } from './garden-words.ts';
import { capital, countOf } from './number-words.ts';

const say = (wrong: string, mend: string): IssueSentence => ({ wrong, mend });
const perhaps = (nearest: string | number | undefined): string =>
  nearest === undefined || nearest === '' ? '' : ` Was "${nearest}" meant?`;

const columnNames: Readonly<Record<string, string>> = {
  tmaxC: 'tmax',
  tminC: 'tmin',
  rainMm: 'rain',
  radiationMJPerM2Day: 'radiation',
  sunHours: 'sunshine',
};
const columnWord = (column: string | number | undefined): string =>
  columnNames[String(column)] ?? String(column);
const eachOnce = (list: string | number | undefined): string =>
  [...new Set(String(list).split(', '))].join(', ');
const orWords = (list: string | number | undefined): string => String(list).split(', ').join(' or ');
const growsInWords = (list: string | number | undefined): string =>
  String(list).split(', ').map(growsInWord).join(' or ');

/** Daily weather files. `where` is a line of that file. */
export const dailyIssueSentences: Readonly<Record<string, SentenceOf>> = {
  'daily-no-header': () =>
    say(
      'The weather file has no header line.',
      'Begin it with: date,tmax,tmin,rain (radiation or sunshine if known).',
    ),
  'daily-column-missing': (d) =>
    say(`The column "${columnWord(d.column)}" is missing.`, 'Add it to the header and to every line.'),
  'daily-no-rows': () => say('The weather file has no days in it.', 'Add one line a day.'),
  'daily-too-many-lines': (d) =>
    say(`The weather file has more than ${d.most} lines.`, 'Leave out the oldest years.'),
  'daily-line-too-long': (d) =>
    say(`The line has ${d.length} characters and is passed over.`, 'Look whether the line breaks got lost.'),
  'daily-bad-date': (d) => say(`"${d.text}" is not a day; the line is passed over.`, 'Write 2024-03-31.'),
  'daily-bad-number': (d) =>
    say(
      `"${d.text}" in ${columnWord(d.column)} is not a number; it is bridged.`,
      'Correct it, or leave the cell empty.',
    ),
  'daily-impossible-value': (d) =>
    say(
      `${d.value} in ${columnWord(d.column)} cannot be; it is bridged.`,
      'Correct it, or leave the cell empty.',
    ),
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
    say(
      d.days === 1
        ? `A day of ${columnWord(d.column)} is missing and was bridged.`
        : `${d.days} days of ${columnWord(d.column)} are missing and were bridged.`,
      'Fill in what is missing if you can.',
    ),
  'daily-long-gap': (d) =>
    say(
      `${d.days} days of ${columnWord(d.column)} are missing in a row.`,
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
      `The record holds ${countOf(Number(d.days), 'day')}, too few to tell one year from another.`,
      'Give two years at least, better ten; or name a station as the climate.',
    ),
  'daily-more-of-the-same': (d) =>
    say(`${d.count} more lines like this are not listed.`, 'Mend the ones above and check again.'),
};

/** What is checked against the catalogue. */
const catalogueSentences: Readonly<Record<WorkflowIssueCode, SentenceOf>> = {
  'kind-unknown': (d) =>
    say(`There is no kind "${d.kind}".${perhaps(d.nearest)}`, 'Run "twelvemonth kinds" for the list.'),
  'kind-passed-over': (d) =>
    say(
      `There is no kind or crop "${d.kind}"; it is passed over.${perhaps(d.nearest)}`,
      'Run "twelvemonth kinds" for the list, or leave it as a note to yourself.',
    ),
  'role-unknown': (d) =>
    say(
      `There is no kitchen role "${d.role}".${perhaps(d.nearest)}`,
      'Use one of those in the headings of "twelvemonth kinds", spelled as in examples/marram-end.jsonc.',
    ),
  'store-unknown': (d) =>
    say(
      `There is no place of keeping "${d.store}".${perhaps(d.nearest)}`,
      'Use dry, cool-damp, frost-free, sand, fridge, freezer or jar.',
    ),
  'station-unknown': (d) =>
    say(
      `There is no station "${d.station}".${perhaps(d.nearest)}`,
      'Take one from docs/data-sources.md, or give your own twelve rows of normals.',
    ),
  'kind-not-for-place': (d) =>
    say(
      `${capital(String(d.kind))} is not a kind for "${d.place}": it wants ${growsInWords(d.growsIn)}.`,
      'Name another place or another kind; until then it is forecast where it stands.',
    ),
  'disease-on-record': (d) =>
    say(
      `"${d.place}" has ${plainCode(String(d.disease))} on record, which ${d.kind} catches.`,
      'Choose another place, or take it off onRecord if it was a mistake.',
    ),
  'plants-over-ground': (d) =>
    say(
      `${d.plants} plants of ${d.kind} are more than "${d.place}" holds (about ${d.most} at the usual spacing).`,
      'Correct the count, or name more ground.',
    ),
  'sown-before-free': (d) =>
    say(
      `"${d.place}" has no room for ${d.kind} on ${d.sow}: ${d.by} stands there ${d.until === '' ? 'for good' : `until about ${d.until}`}.`,
      'Sow later, allow what stands to be cleared earlier (mayClearFrom), or name another place.',
    ),
  'stock-far-over-usual': (d) =>
    say(
      `${d.kg} kg of ${d.kind} is more than ten times what this household eats while it keeps (about ${d.usualKg} kg).`,
      'Look whether the amount or its unit is a slip; if it is right, leave it.',
    ),
  'place-not-for-growing': (d) =>
    say(
      d.takenBy === ''
        ? `"${d.place}" is a bench for raising plants; nothing is grown there for life.`
        : `"${d.place}" is taken by ${d.takenBy}.`,
      'Name a bed, a tub or a frame.',
    ),
  'place-cannot-carry': (d) =>
    say(
      `${capital(String(d.kind))} does not grow in "${d.place}": it wants ${growsInWords(d.growsIn)}.`,
      'Name another place, or none: then the first that suits is taken.',
    ),
  'nowhere-to-grow': (d) =>
    say(
      `This garden has no place for ${d.kind}: it wants ${growsInWords(d.growsIn)}.`,
      'Add such a place under places, or choose another kind.',
    ),
  'tub-too-small': (d) =>
    say(
      `A tub of ${d.litres} litres in "${d.place}" is too small for ${d.kind}, which needs ${d.needsLitres}.`,
      'Name a larger tub or a bed.',
    ),
  'route-unknown': (d) =>
    say(
      `"${d.route}" is neither a route nor a stage.`,
      `Use one of ${eachOnce(d.allowed)}; stages are joined by commas: mat,sill,frame,bed.`,
    ),
  'route-not-for-kind': (d) =>
    say(`${capital(String(d.kind))} is not raised by "${d.route}".`, `Use ${orWords(d.allowed)}.`),
  'route-without-bench': (d) =>
    say(
      `The route "${d.route}" needs a ${stageWord(String(d.stage))} that this garden does not have.`,
      'Add it under places as a bench, or choose another route.',
    ),
  'stage-passed-over': (d) =>
    say(
      `The stage "${d.stage}" is not counted: the forecast goes over ${d.used}.`,
      'Leave it out of the route, or leave out the stage that it should replace.',
    ),
  'count-too-small': (d) => say(`A count of ${d.count} cannot be forecast.`, 'Give 1 plant or more.'),
  'stands-for-years': (d) =>
    say(
      `${capital(String(d.kind))} is planted once and stands for years; the years until it bears are not forecast.`,
      'Write it under standing: the plan then counts its harvests.',
    ),
  'sow-day-not-plausible': (d) =>
    say(`${d.sow} is no day to sow on.`, 'Give a day of these years, as 2027-03-20.'),
  'stock-out-of-season': (d) =>
    say(
      `${capital(String(d.kind))} can hardly be bought around ${d.sow}; the forecast takes it that you have some.`,
      'Plant in its season, or keep some back from your own.',
    ),
  'rest-begins-late': (d) =>
    say(
      d.from === ''
        ? `"${d.place}" cannot rest from ${d.wanted}: what stands there stays longer than that.`
        : `"${d.place}" cannot rest from ${d.wanted}, but from ${d.from}: what stands there stays until then.`,
      'Let what stands be cleared earlier (mayClearFrom), or let another bed rest.',
    ),
  'begun-without-room': (d) =>
    say(
      `${capital(String(d.kind))}, to be sown on ${d.sow}${d.place === '' ? '' : ` for "${d.place}"`}, has no ground now: the file has something else there.`,
      'Correct what stands in the file, or say that it was not begun (--not-begun).',
    ),
  'no-climate': () =>
    say(
      'There is no weather to forecast with.',
      'Name a station as the climate, give twelve rows of normals, or a daily weather file.',
    ),
};

/** What is checked against the catalogue, and what the command line itself finds. */
export const workflowIssueSentences: Readonly<Record<string, SentenceOf>> = {
  ...catalogueSentences,
  'weather-file-missing': (d) =>
    say(
      `The weather file ${d.path} cannot be read: ${d.problem}.`,
      'Put it beside the garden file, or name a station as the climate.',
    ),
};
