/** More names than a household has: not worth the time. */
const mostCandidates = 300;

/** The word that was probably meant: smallest edit distance (Levenshtein 1966), if it is near enough; else ''. */
export function nearestOf(word: string, known: Iterable<string>): string {
  const candidates = [...known];
  if (candidates.length > mostCandidates) return '';
  const wanted = word.toLowerCase().slice(0, 80);
  let best = '';
  let bestDistance = Math.max(2, Math.floor(wanted.length / 3)) + 1;
  for (const candidate of candidates) {
    const lower = candidate.toLowerCase();
    if (lower === wanted) return candidate;
    const start = Math.min(lower.length, wanted.length);
    const distance =
      start >= 3 && (lower.startsWith(wanted) || wanted.startsWith(lower))
        ? 1.5
        : editDistance(lower, wanted);
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

function editDistance(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = previous[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(previous[j]! + 1, row[j - 1]! + 1, swap));
    }
    previous = row;
  }
  return previous[b.length]!;
}
