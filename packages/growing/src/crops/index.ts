export * from './calendar.ts';
export * from './catalogue.ts';
export type * from './crop-type.ts';
export * from './families.ts';
export * from './hazards.ts';
export * from './own-kind.ts';
export * from './roles.ts';
export type { SourceEntry } from './table-types.ts';
