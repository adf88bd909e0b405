import { assembleRole } from './assemble-subjects.ts';
import type { RoleRow } from './crop-type.ts';
import { readEach } from './subject-rows.ts';

let roles: readonly RoleRow[] | null = null;

export function allRoles(): readonly RoleRow[] {
  roles ??= readEach('role', assembleRole);
  return roles;
}

export function roleById(id: string): RoleRow | undefined {
  return allRoles().find((role) => role.id === id);
}
