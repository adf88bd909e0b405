/** The cases of docs/evaluation.md: which garden files there are, and what they stand for. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Issue } from '../packages/basis/src/index.ts';
import { type Garden, parseGarden } from '../packages/garden/src/index.ts';

export type Climate = 'atlantic' | 'inland' | 'continental' | 'southern';

export interface EvaluationCase {
  /** The file in `cases/`, without its ending. */
  readonly name: string;
  readonly climate: Climate;
  readonly appetite: 'thin' | 'usual' | 'rich';
  readonly cover: boolean;
  /** Nobody could feed this household from this ground: rivals are no straw men here. */
  readonly shortOfGround: boolean;
  /** Part of the small set of `npm test`. */
  readonly small: boolean;
}

const row = (
  name: string,
  climate: Climate,
  appetite: EvaluationCase['appetite'],
  cover: boolean,
  marks: readonly ('short' | 'small')[] = [],
): EvaluationCase => ({
  name,
  climate,
  appetite,
  cover,
  shortOfGround: marks.includes('short'),
  small: marks.includes('small'),
});

export const evaluationCases: readonly EvaluationCase[] = [
  row('balcony-for-one', 'inland', 'rich', false, ['short']),
  row('yard-of-tubs', 'inland', 'thin', false, ['small']),
  row('three-beds-inland', 'inland', 'thin', true, ['small']),
  row('hungry-terrace', 'inland', 'rich', false, ['short']),
  row('hot-plain', 'continental', 'usual', false),
  row('cove-cottage', 'atlantic', 'rich', true),
  row('southern-spring', 'southern', 'usual', true),
  row('plain-fare', 'inland', 'thin', false),
  row('windy-isle', 'atlantic', 'usual', true),
  row('cold-winter-tunnel', 'continental', 'rich', true),
  row('glass-and-clubroot', 'atlantic', 'usual', true),
  row('lowland-allotment', 'inland', 'usual', false),
  row('southern-autumn', 'southern', 'usual', true),
  row('shared-field', 'inland', 'usual', true),
];

export const casesFolder = join(import.meta.dirname, 'cases');

export interface EvaluationGarden {
  readonly garden: Garden;
  readonly fromDay: number;
  readonly issues: readonly Issue[];
}

export function readCaseGarden(name: string): EvaluationGarden {
  const file = join(casesFolder, `${name}.jsonc`);
  const { garden, issues } = parseGarden(readFileSync(file, 'utf8'), { today: 0 });
  if (garden === null || typeof garden.planFrom !== 'number')
    throw new Error(`${file} cannot be planned: ${issues.map((issue) => issue.code).join(', ')}`);
  return { garden, fromDay: garden.planFrom, issues };
}
