import type { OwnKindIssueCode } from '@twelvemonth/growing';
import type { IssueSentence, SentenceOf } from './garden-issue-sentences.ts';

const say = (wrong: string, mend: string): IssueSentence => ({ wrong, mend });
const lookUp = 'Look at its parent with "twelvemonth kinds ID".';

/** Kinds that a household describes itself, from a seed packet. */
export const ownKindSentences: Readonly<Record<OwnKindIssueCode, SentenceOf>> = {
  'own-kind.parent-unknown': (d) =>
    say(
      `There is no kind "${d.parent}" for it to be like.`,
      'Take an id from the list of "twelvemonth kinds".',
    ),
  'own-kind.id-taken': (d) =>
    say(`The catalogue has a kind "${d.id}" already.`, 'Give your own kind another id.'),
  'own-kind.parameter-unknown': (d) => say(`Kinds have no value "${d.parameter}".`, lookUp),
  'own-kind.outside-plausible': (d) =>
    say(
      `${d.value} for "${d.parameter}" lies outside ${d.low} to ${d.high}.`,
      'Look at the unit, and at the packet again.',
    ),
  'own-kind.not-a-number': (d) =>
    say(`"${d.value}" for "${d.parameter}" is not a number.`, 'Write a number.'),
  'own-kind.not-allowed': (d) =>
    say(`"${d.value}" is not offered for "${d.parameter}".`, `Use one of: ${d.allowed}.`),
  'own-kind.range-disordered': (d) =>
    say(
      `${d.value} for "${d.parameter}" lies outside its own range, ${d.low} to ${d.high}.`,
      'Put low, value and high in rising order.',
    ),
  'own-kind.crop-unknown': (d) => say(`There is no crop "${d.value}".`, lookUp),
  'own-kind.days-contradict': (d) =>
    say(
      `The packet says ${d.days} days; ${d.parent}, which it is like, takes about ${d.usualDays}.`,
      'Perhaps days and weeks were mixed up, the packet counts from planting, or another parent fits better. It is taken as written.',
    ),
  'own-kind.days-too-few': (d) =>
    say(
      `${d.days} days are over before a plant like ${d.parent} has come up or been raised; its usual ${d.usualDays} are used.`,
      'Say whether the packet counts from sowing or from planting (countedFrom).',
    ),
  'own-kind.days-without-effect': (d) =>
    say(
      `${d.parent} waits for its season (cold, or the length of the day), so the packet's ${d.days} days do not move it.`,
      'Leave the days out, or choose a parent of the season you mean.',
    ),
  'table.parameter-unknown': (d) => say(`Kinds have no value "${d.parameter}".`, lookUp),
  'table.parameter-missing': (d) => say(`"${d.parameter}" is missing.`, 'Give it under "changes".'),
  'table.not-a-number': (d) => say(`"${d.value}" for "${d.parameter}" is not a number.`, 'Write a number.'),
  'table.range-missing': (d) =>
    say(`"${d.parameter}" needs a low and a high value.`, 'Write { "value", "low", "high" }.'),
  'table.harvest-not-listed': (d) =>
    say(`It has values of a harvest "${d.harvest}" that is not in its list of harvests.`, lookUp),
  'table.harvest-unknown': (d) => say(`One harvest follows "${d.harvest}", which it does not have.`, lookUp),
  'table.gate-needs-cold-range': (d) =>
    say(`"${d.parameter}" waits for cold, but no range of cold is given.`, lookUp),
  'table.cold-range-disordered': () =>
    say('The three temperatures at which cold counts are not in rising order.', lookUp),
  'table.cold-shares-disordered': () => say('A tenth would bolt after more cold than nine tenths.', lookUp),
  'table.temperatures-disordered': (d) =>
    say(`"${d.parameter}" breaks the order of its temperatures.`, lookUp),
};
