/**
 * From demands that cannot be met together, a set from which none can be left out: deletion filter (Chinneck & Dravnieks
 * 1991). Each demand is taken out in turn; what cannot be met without it either is left out for good.
 */
export async function irreducibleSet<Demand>(
  demands: readonly Demand[],
  canBeMet: (demands: readonly Demand[]) => Promise<boolean>,
): Promise<Demand[]> {
  let set = [...demands];
  for (const demand of demands) {
    const without = set.filter((other) => other !== demand);
    if (!(await canBeMet(without))) set = without;
  }
  return set;
}
