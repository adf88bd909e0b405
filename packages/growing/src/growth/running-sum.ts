/** A running sum S has one entry more than there are days: S[i] is the sum over the days before day i. */
export type RunningSum = Float64Array;

/** No such day within the weather at hand. */
export const NEVER = Number.MAX_SAFE_INTEGER;
