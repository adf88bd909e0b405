import { assembleFamily } from './assemble-subjects.ts';
import type { FamilyRow } from './crop-type.ts';
import { readEach } from './subject-rows.ts';

let families: readonly FamilyRow[] | null = null;

export function allFamilies(): readonly FamilyRow[] {
  families ??= readEach('family-rest', assembleFamily);
  return families;
}

export function familyById(id: string): FamilyRow | undefined {
  return allFamilies().find((family) => family.id === id);
}
