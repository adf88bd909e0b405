export * from './climate/index.ts';
export * from './crops/index.ts';
export * from './forecast/index.ts';
export * from './growth/index.ts';
export * from './places/index.ts';
export * from './work/index.ts';
