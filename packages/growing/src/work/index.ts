export * from './work-times.ts';
