/** Up to the grain of the coefficients, so that ledger and program count the same, and never less than it takes. */
export const benchGrain = (m2: number): number => Math.ceil(m2 * 1024 - 1e-9) / 1024;
