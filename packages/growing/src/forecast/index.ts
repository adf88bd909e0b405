export * from './eaten-score.ts';
export * from './keeping.ts';
export * from './kitchen-rule.ts';
export * from './member.ts';
export * from './servings.ts';
export * from './sowing-plan.ts';
export * from './sowing-run.ts';
export type { RoomG } from './store-room.ts';
export * from './usual-keeping.ts';
