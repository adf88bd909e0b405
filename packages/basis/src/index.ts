export * from './growing-week.ts';
export * from './invariant.ts';
export * from './issue.ts';
export * from './outcome.ts';
export * from './plain-day.ts';
export * from './quantiles.ts';
export * from './random-stream.ts';
