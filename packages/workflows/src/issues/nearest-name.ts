/** Pairs of neighbouring letters, with the ends marked. */
function pairsOf(word: string): Set<string> {
  const marked = `^${word.toLowerCase()}$`;
  return new Set(Array.from({ length: marked.length - 1 }, (_, i) => marked.slice(i, i + 2)));
}

const leastLikeness = 0.45;

/** The name that was probably meant: most letter pairs shared (Dice 1945), if it is like enough; else ''. */
export function nearestName(word: string, known: Iterable<string>): string {
  const wanted = pairsOf(word.slice(0, 80));
  let best = '';
  let bestLikeness = leastLikeness;
  for (const name of known) {
    const pairs = pairsOf(name);
    let shared = 0;
    for (const pair of pairs) if (wanted.has(pair)) shared++;
    const likeness = (2 * shared) / (pairs.size + wanted.size);
    if (likeness > bestLikeness) {
      best = name;
      bestLikeness = likeness;
    }
  }
  return best;
}
