export * from './kitchen-rule.ts';
export * from './member.ts';
export * from './servings.ts';
export * from './sowing-plan.ts';
export * from './sowing-run.ts';
export * from './usual-keeping.ts';
