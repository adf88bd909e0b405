export * from './ports.ts';
export type * from './report/forecast-report.ts';
export type * from './report/plan-report.ts';
export * from './sheets/index.ts';
export * from './plan-garden.ts';
