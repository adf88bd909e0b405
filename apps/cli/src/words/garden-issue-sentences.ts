import type { GardenIssueCode } from '@twelvemonth/garden';

/** What is wrong, and how to mend it. Where it is stands before the sentence. */
export interface IssueSentence {
  readonly wrong: string;
  readonly mend: string;
}
export type Detail = Readonly<Record<string, string | number>>;
export type SentenceOf = (detail: Detail) => IssueSentence;

const say = (wrong: string, mend: string): IssueSentence => ({ wrong, mend });
const perhaps = (nearest: string | number | undefined): string =>
  nearest === undefined || nearest === '' ? '' : ` Was "${nearest}" meant?`;

const problemWords: Readonly<Record<string, string>> = {
  InvalidSymbol: 'something that means nothing here',
  InvalidNumberFormat: 'a number that is none',
  PropertyNameExpected: 'a name in quotes is expected',
  ValueExpected: 'a value is expected',
  ColonExpected: 'a colon is expected',
  CommaExpected: 'a comma is expected',
  CloseBraceExpected: 'a closing brace is expected',
  CloseBracketExpected: 'a closing bracket is expected',
  EndOfFileExpected: 'something follows after the end of the garden',
  InvalidCommentToken: 'a comment that is none',
  UnexpectedEndOfComment: 'a comment without an end',
  UnexpectedEndOfString: 'a text without an end',
  UnexpectedEndOfNumber: 'a number that breaks off',
  InvalidUnicode: 'a sign code that is none',
  InvalidEscapeCharacter: 'a backslash that means nothing',
  InvalidCharacter: 'a sign that is not allowed in a text',
};
/** Types as a person says them; "number / word" is one of several. */
const typeNames: Readonly<Record<string, string>> = {
  group: 'a group in braces',
  list: 'a list in brackets',
  array: 'a list in brackets',
  object: 'a group in braces',
  string: 'a text',
  word: 'a word',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  null: 'nothing',
};
const typeWords = (types: string | number | undefined): string =>
  String(types)
    .split(' / ')
    .map((type) => typeNames[type] ?? type)
    .join(' or ');
const problemText = (problem: string | number | undefined): string =>
  problemWords[String(problem)] ?? String(problem);

export const gardenIssueSentences: Readonly<Record<GardenIssueCode, SentenceOf>> = {
  'file-too-large': (d) =>
    say(
      `The file has ${d.size} characters; a garden file has at most ${d.mostSize}.`,
      'Give the garden file itself, not an export or a log.',
    ),
  'file-empty': () => say('The file is empty.', 'Start from one of the gardens in examples/.'),
  'file-too-full': (d) =>
    say(
      `The file holds more than ${d.most} names, values and signs; no garden does.`,
      'Give the garden file itself, not an export or a log.',
    ),
  'file-not-jsonc': (d) =>
    say(
      `The text cannot be read from column ${d.column} on: ${problemText(d.problem)}.`,
      'Look for a missing comma, quote or bracket just before this place.',
    ),
  'file-cut-off': () =>
    say('The file ends in the middle.', 'Close the open brackets and quotes, or fetch the whole file again.'),
  'file-nested-too-deep': (d) =>
    say(
      `Brackets stand more than ${d.deepest} deep inside each other.`,
      'A garden needs six levels at most: take the surplus brackets out.',
    ),
  'file-not-a-garden': (d) =>
    say(
      `A garden file is one object in braces; this holds ${typeWords(d.found)}.`,
      'Start from one of the gardens in examples/.',
    ),
  'newer-version': (d) =>
    say(
      `The file was made for schemaVersion ${d.found}; this program knows up to ${d.newest}.`,
      'Use a newer program.',
    ),
  'version-not-understood': (d) =>
    say(`schemaVersion is "${d.found}".`, 'Write a whole number: "schemaVersion": 1.'),
  'version-missing': (d) =>
    say(`schemaVersion is missing; ${d.assumed} is taken.`, `Write "schemaVersion": ${d.assumed}.`),
  'errors-left-out': (d) =>
    say(`${d.count} more findings are not listed.`, 'Mend the ones above and check again.'),
  'warnings-left-out': (d) =>
    say(`${d.count} more findings are not listed.`, 'Mend the ones above and check again.'),
  'key-unknown': (d) =>
    say(
      `"${d.key}" is not known here and is passed over.${perhaps(d.nearest)}`,
      'Correct the name, or take the line out.',
    ),
  'key-twice': (d) => say(`"${d.key}" stands here twice; the last one counts.`, 'Take one of them out.'),
  'value-missing': (d) => say(`"${d.key}" is missing.`, `Write a value for "${d.key}".`),
  'value-of-wrong-type': (d) =>
    say(
      `Here stands ${typeWords(d.found)}, but ${typeWords(d.expected)} is needed.`,
      `Write ${typeWords(d.expected)}.`,
    ),
  'value-too-small': (d) => say(`${d.found} is too small.`, `Write ${d.least} or more.`),
  'value-too-large': (d) => say(`${d.found} is too large.`, `Write ${d.most} or less.`),
  'value-not-offered': (d) =>
    say(
      `"${d.found}" is none of the words that may stand here.${perhaps(d.nearest)}`,
      `Choose one of: ${d.allowed}.`,
    ),
  'value-not-accepted': (d) =>
    say(
      `"${d.found}" cannot be used here (${d.problem}).`,
      'See docs/schema/garden.schema.json for what may stand here.',
    ),
  'text-too-long': (d) => say(`The text is longer than ${d.most} characters.`, 'Shorten it.'),
  'id-malformed': (d) =>
    say(
      `"${d.found}" is not an id.`,
      'Use small letters, digits and hyphens, beginning with a letter: "north-bed".',
    ),
  'id-twice': (d) => say(`The id "${d.id}" is already used at ${d.first}.`, 'Give one of them another id.'),
  'count-negative': (d) => say(`A count of ${d.found} cannot be.`, 'Write 0 or more.'),
  'amount-not-understood': (d) =>
    say(
      `"${d.found}" is not an amount that can be read.`,
      'Write a number, a range, or words like "about 40" or "two thirds of a net".',
    ),
  'amount-needs-a-unit': (d) =>
    say(`"${d.found}" of ${d.kind} needs a unit.`, 'Write kilograms or a measure: "12 kg", "half a net".'),
  'date-impossible': (d) => say(`There is no day "${d.found}".`, 'Correct the day or the month.'),
  'date-not-understood': (d) =>
    say(
      `"${d.found}" is not a date that can be read.`,
      'Write 2026-04-12, "12 April", "mid-April" or "April".',
    ),
  'date-not-exact': (d) => say(`"${d.found}" is too vague here.`, 'Write one day: 2026-04-12.'),
  'date-in-future': (d) =>
    say(
      `${d.found} lies after ${d.reference}, the day the plan begins, but what stands must have been begun before.`,
      'Correct the date, or take it out and let the plan sow it.',
    ),
  'planted-before-sown': (d) =>
    say(`It was planted (${d.planted}) before it was sown (${d.sown}).`, 'Correct one of the two dates.'),
  'dates-reversed': (d) =>
    say(`The stretch ends (${d.to}) before it begins (${d.from}).`, 'Swap the two days.'),
  'household-without-people': () =>
    say('Nobody eats here.', 'Name at least one person under household.people.'),
  'role-named-twice': (d) =>
    say(`The role "${d.role}" is named twice; the last one counts.`, 'Take one of them out.'),
  'latitude-impossible': (d) =>
    say(`A latitude of ${d.found} cannot be.`, 'Write degrees between -90 and 90, south negative.'),
  'latitude-not-temperate': (d) =>
    say(
      `At latitude ${d.found} the forecast has not been tried.`,
      'Trust it less, or check the sign: south is negative.',
    ),
  'longitude-impossible': (d) =>
    say(`A longitude of ${d.found} cannot be.`, 'Write degrees between -180 and 180, west negative.'),
  'climate-unclear': () =>
    say(
      'The climate cannot be told.',
      'Give the id of a station ("climate": "valentia"), twelve rows of normals, or { "dailyCsv": "weather.csv" }: one of them.',
    ),
  'csv-path-not-beside-file': (d) =>
    say(
      `"${d.found}" is not a file beside the garden file.`,
      'Put the weather file into the same folder or below it, and give its relative path.',
    ),
  'normals-not-twelve': (d) => say(`There are ${d.found} rows of normals.`, 'Give twelve, January first.'),
  'normals-tmax-below-tmin': (d) =>
    say(
      `In month ${d.month} the mean maximum (${d.tmaxC} °C) lies below the mean minimum (${d.tminC} °C).`,
      'Swap or correct them.',
    ),
  'twelve-months-needed': (d) => say(`There are ${d.found} monthly values.`, 'Give twelve, January first.'),
  'cover-unknown': (d) =>
    say(`There is no cover "${d.found}".${perhaps(d.nearest)}`, 'Add it under covers, or correct the id.'),
  'place-unknown': (d) =>
    say(`There is no place "${d.found}".${perhaps(d.nearest)}`, 'Add it under places, or correct the id.'),
  'place-number-unknown': (d) =>
    say(`There is no number ${d.found}: the place has ${d.most}.`, `Write a number from 1 to ${d.most}.`),
  'place-without-size': (d) => say(`The size of "${d.place}" is not known.`, `Give ${d.needs}.`),
  'no-places': () => say('There is nowhere to grow anything.', 'Add beds, tubs or benches under places.'),
  'bed-over-full': (d) =>
    say(
      `What stands in "${d.place}" needs ${d.groundM2} m², but it has ${d.placeM2} m².`,
      'Correct the counts, or give groundM2 for the crops that stand closer.',
    ),
  'place-taken': (d) => say(`"${d.place}" is taken by ${d.takenBy}.`, 'Move the crop, or take takenBy out.'),
  'packet-time-twice': (d) =>
    say(
      `It says both ${d.days} days and ${d.weeks} weeks to the harvest.`,
      'Keep the one that stands on the packet.',
    ),
  'wish-unclear': (d) =>
    say(
      d.found === ''
        ? `The wish${d.kind === '' ? '' : ` about ${d.kind}`} wishes nothing.`
        : `The wish${d.kind === '' ? '' : ` about ${d.kind}`} cannot be told (${d.found}).`,
      'Write "kind" with "never": true, "atLeast" or "atMost" and a number, or "sow" with what is settled; or, without a kind, "rest": true with a place, or "noPlanting": true with "from".',
    ),
  'wishes-disagree': (d) =>
    say(
      `At least ${d.least} and at most ${d.most} of ${d.kind} are wished for.`,
      'Correct one of the two wishes.',
    ),
};
