import type { DecisionLine } from '@twelvemonth/workflows';
import { dayNear } from './date-words.ts';

/** What must be seen on a make-or-break day, and what goes in otherwise. */

const numbers: Readonly<Record<number, string>> = {
  1: 'one',
  2: 'two',
  3: 'three',
  4: 'four',
  5: 'five',
  6: 'six',
  7: 'seven',
  8: 'eight',
  10: 'ten',
};
const shares: Readonly<Record<number, string>> = {
  0.1: 'a tenth',
  0.2: 'a fifth',
  0.25: 'a quarter',
  0.3: 'three in ten',
  0.33: 'a third',
  0.4: 'two fifths',
  0.5: 'half',
  0.6: 'three fifths',
  0.66: 'two thirds',
  0.7: 'seven in ten',
  0.75: 'three quarters',
  0.8: 'eight in ten',
  0.9: 'nine in ten',
};
const shareWord = (value: number): string => shares[value] ?? `${Math.round(value * 100)} %`;

export function signWords({ code, value }: DecisionLine['rule']): string {
  switch (code) {
    case 'up':
      return 'it is up';
    case 'standing':
      return `${shareWord(value)} of the plants or more still stand`;
    case 'not-bolted':
      return `no more than ${shareWord(value)} has run to seed`;
    case 'leaves':
      return `the plants have ${numbers[value] ?? value} true ${value === 1 ? 'leaf' : 'leaves'} or more`;
    case 'size':
      return value >= 1
        ? 'it is as big as it will be picked'
        : `it is ${shareWord(value)} as big as it will be picked, or bigger`;
  }
}

/** "keep it if the plants have two true leaves or more; else clear it and sow 18 early peas in its place" */
export function keepOrClearWords({ rule, fallback, decisionDay }: DecisionLine): string {
  const later = fallback.sow === decisionDay ? '' : ` on ${dayNear(fallback.sow, decisionDay)}`;
  return `keep it if ${signWords(rule)}; else clear it and ${fallback.act} ${fallback.kindName} (${fallback.plants})${later} in its place`;
}

export const makeOrBreakWords = (line: DecisionLine, near: number): string =>
  `make or break ${dayNear(line.decisionDay, near)}: ${keepOrClearWords(line)}`;
