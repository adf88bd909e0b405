/** The name that differs least from what was written, or null when none is near. */
export function nearestName(written: string, names: readonly string[]): string | null {
  let best: string | null = null;
  let least = Math.max(2, Math.ceil(written.length / 3)) + 1;
  for (const name of names) {
    const distance = changesBetween(written.toLowerCase(), name.toLowerCase());
    if (distance < least) {
      least = distance;
      best = name;
    }
  }
  return best;
}

/** Letters to change, add or take out (Levenshtein). */
function changesBetween(a: string, b: string): number {
  let before = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= Math.min(a.length, 80); i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++)
      row.push(Math.min(before[j]! + 1, row[j - 1]! + 1, before[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    before = row;
  }
  return before[b.length]!;
}
