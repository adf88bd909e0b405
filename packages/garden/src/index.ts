export {
  addStanding,
  addWish,
  type EditedText,
  removeWish,
  setPlanFrom,
  setValue,
  writtenStandingOf,
  writtenWishOf,
} from './file/edit.ts';
export * from './file/issue-codes.ts';
export { type ParsedGarden, parseGarden } from './file/parse.ts';
export { mostCharacters } from './file/read-text.ts';
export { readCount, readWeightG } from './file/vague-amount.ts';
export { type DayFrame, readVagueDay } from './file/vague-day.ts';
export { gardenJsonSchema } from './file/write-json-schema.ts';
export { textOfAmount, textOfVagueDay } from './file/write-vague.ts';
export { newestSchemaVersion } from './migrate/schema-version.ts';
export * from './records/garden.ts';
export { newId, slugOf } from './records/new-id.ts';
export * from './tables/appetite-defaults.ts';
export { type HouseholdMeasure, householdMeasures } from './tables/household-measures.ts';
