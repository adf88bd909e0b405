/** Our own bug: throws with names and values. Never for doubtful data (that is an Issue). */
export function invariant(
  condition: boolean,
  what: string,
  values: Readonly<Record<string, unknown>> = {},
): asserts condition {
  if (!condition) throw new Error(`broken invariant: ${what} ${JSON.stringify(values)}`);
}
