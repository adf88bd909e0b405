export * from './compost.ts';
export * from './work-times.ts';
