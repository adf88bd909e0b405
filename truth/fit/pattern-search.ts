/** Pattern search (Hooke & Jeeves 1961): the same start gives the same answer. Steps halve until all are under 1/1024. */
export function patternSearch(
  cost: (x: readonly number[]) => number,
  start: readonly number[],
  steps: readonly number[],
): { readonly at: readonly number[]; readonly cost: number } {
  const explore = (from: readonly number[], scale: number): { at: number[]; cost: number } => {
    const at = [...from];
    let best = cost(at);
    for (let i = 0; i < at.length; i++) {
      const here = at[i]!;
      for (const side of [1, -1]) {
        at[i] = here + side * scale * steps[i]!;
        const tried = cost(at);
        if (tried < best) {
          best = tried;
          break;
        }
        at[i] = here;
      }
    }
    return { at, cost: best };
  };
  let base = { at: [...start], cost: cost(start) };
  for (let scale = 1; scale > 1 / 1024; ) {
    const found = explore(base.at, scale);
    if (found.cost >= base.cost) {
      scale /= 2;
      continue;
    }
    const leap = explore(
      found.at.map((x, i) => 2 * x - base.at[i]!),
      scale,
    );
    base = leap.cost < found.cost ? leap : found;
  }
  return base;
}
