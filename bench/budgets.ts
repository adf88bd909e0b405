/** Budgets as multiples of the reference loop timed in the same run; about three times what was measured. */
export const movedSowingBudget = 0.12;
/** A moved sowing previewed among 200, in 30 members: 5 ms where the reference loop takes 12.5 ms. */
export const previewBudget = 0.4;
export const candidateBudget = 0.008;
export const firstPlanBudget = 300;
/** The day loop on ready place weather takes at least so many times as long as the engine for the same first days. */
export const leastNaiveFactor = 1;
/** The same of the day loop from outdoor weather against the engine's whole answers. */
export const leastOutdoorFactor = 10;
/** Gardens a second of a batch with two workers against one, on two cores. */
export const leastBatchFactor = 1.3;
