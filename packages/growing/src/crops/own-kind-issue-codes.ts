/** Everything that describing an own kind can find. The sentences live in the apps. */
export const ownKindIssueCodes = [
  'own-kind.parent-unknown',
  'own-kind.id-taken',
  'own-kind.parameter-unknown',
  'own-kind.outside-plausible',
  'own-kind.not-a-number',
  'own-kind.not-allowed',
  'own-kind.range-disordered',
  'own-kind.crop-unknown',
  'own-kind.days-contradict',
  'own-kind.days-too-few',
  'own-kind.days-without-effect',
  'table.parameter-unknown',
  'table.parameter-missing',
  'table.not-a-number',
  'table.range-missing',
  'table.harvest-not-listed',
  'table.harvest-unknown',
  'table.gate-needs-cold-range',
  'table.cold-range-disordered',
  'table.cold-shares-disordered',
  'table.temperatures-disordered',
] as const;

export type OwnKindIssueCode = (typeof ownKindIssueCodes)[number];
