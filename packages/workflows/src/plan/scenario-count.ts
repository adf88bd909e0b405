/** Scenarios that sowings are chosen and tried in. */
export const scenarioCount = 4;
