import type { ReportSowing } from '../report/plan-report.ts';

/** 1, 2, 3, 5 as "1–3, 5": the same signs in every language. */
export function numberRuns(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const n of [...new Set(numbers)].sort((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run !== undefined && n === run[1] + 1) run[1] = n;
    else runs.push([n, n]);
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : b === a + 1 ? `${a}, ${b}` : `${a}–${b}`)).join(', ');
}

export const numberedName = (placeName: string, numbers: readonly number[]): string => {
  const runs = numberRuns(numbers.filter((n) => n > 0));
  return runs === '' ? placeName : `${placeName} ${runs}`;
};

/** Every bed or tub that a sowing stands in, "tubs by the door 1–5"; its last stage where it has no ground. */
export function placeNamesOf(sowing: ReportSowing): string {
  const names = [...new Set(sowing.beds.map((bed) => bed.placeName))];
  if (names.length === 0) return sowing.route.at(-1)?.placeName ?? sowing.area;
  return names
    .map((name) =>
      numberedName(
        name,
        sowing.beds.filter((bed) => bed.placeName === name).map((bed) => bed.number),
      ),
    )
    .join('; ');
}
