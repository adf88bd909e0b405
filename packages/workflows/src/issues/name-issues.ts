/** Names in a garden file that the catalogue does not have. */
import type { Issue } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { allRoles, isStore, stationIds } from '@twelvemonth/growing';
import { kindIdsOf, kindsOf } from '../kinds/garden-kinds.ts';
import { workflowIssue } from '../workflow-issue-codes.ts';
import { nearestName } from './nearest-name.ts';

const storeIds = ['dry', 'cool-damp', 'frost-free', 'sand', 'fridge', 'freezer', 'jar'];

function kindIssues(garden: Garden): Issue[] {
  const kindIds = kindIdsOf(garden);
  const known = new Set(kindIds);
  const crops = new Set(kindsOf(garden).map((kind) => kind.crop));
  const unknown = (kind: string, where: string): Issue[] =>
    known.has(kind)
      ? []
      : [workflowIssue('kind-unknown', where, { kind, nearest: nearestName(kind, kindIds) })];
  const passedOver = (kind: string, where: string): Issue[] =>
    known.has(kind) || crops.has(kind)
      ? []
      : [
          workflowIssue('kind-passed-over', where, {
            kind,
            nearest: nearestName(kind, [...kindIds, ...crops]),
          }),
        ];
  return [
    ...garden.household.yearly.flatMap(({ kind }) => unknown(kind, `household.yearly.${kind}`)),
    ...garden.household.dislikes.flatMap((kind, i) => passedOver(kind, `household.dislikes[${i}]`)),
    ...garden.standing.flatMap(({ kind }, i) => unknown(kind, `standing[${i}].kind`)),
    ...garden.stock.flatMap(({ kind }, i) => unknown(kind, `stock[${i}].kind`)),
    ...garden.places.flatMap((place, i) =>
      place.grewBefore.flatMap(({ kind }, j) => passedOver(kind, `places[${i}].grewBefore[${j}].kind`)),
    ),
    ...garden.seeds.flatMap(({ kind }, i) => passedOver(kind, `seeds[${i}].kind`)),
    ...garden.wishes.flatMap((wish) =>
      !('kind' in wish) || (wish.wish === 'forbid' && crops.has(wish.kind))
        ? []
        : unknown(wish.kind, `wishes about ${wish.kind}`),
    ),
  ];
}

function roleIssues(garden: Garden): Issue[] {
  const roleIds: string[] = allRoles().map((role) => role.id);
  const unknown = (role: string, where: string): Issue[] =>
    roleIds.includes(role)
      ? []
      : [workflowIssue('role-unknown', where, { role, nearest: nearestName(role, roleIds) })];
  return [
    ...garden.household.appetite.flatMap(({ role }) => unknown(role, `household.appetite.${role}`)),
    ...garden.household.people.flatMap((person, i) =>
      Object.keys(person.eaterShare).flatMap((role) =>
        role === 'other' ? [] : unknown(role, `household.people[${i}]`),
      ),
    ),
  ];
}

function storeIssues(garden: Garden): Issue[] {
  const unknown = (store: string, where: string): Issue[] =>
    isStore(store)
      ? []
      : [workflowIssue('store-unknown', where, { store, nearest: nearestName(store, storeIds) })];
  return [
    ...garden.stores.flatMap(({ store }, i) => unknown(store, `stores[${i}].store`)),
    ...garden.stock.flatMap(({ store }, i) => unknown(store, `stock[${i}].store`)),
  ];
}

function stationIssues(garden: Garden): Issue[] {
  const { climate } = garden.site;
  if (climate.kind !== 'station' || stationIds.includes(climate.station)) return [];
  const nearest = nearestName(climate.station, stationIds);
  return [workflowIssue('station-unknown', 'site.climate', { station: climate.station, nearest })];
}

export function nameIssues(garden: Garden): Issue[] {
  return [...kindIssues(garden), ...roleIssues(garden), ...storeIssues(garden), ...stationIssues(garden)];
}
