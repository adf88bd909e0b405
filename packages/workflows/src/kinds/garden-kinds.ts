/** The kinds that a garden can speak of: the catalogue's and its own. */
import type { Issue } from '@twelvemonth/basis';
import type { Garden, OwnKindEntry } from '@twelvemonth/garden';
import { allKinds, type CropType, kindById, kindIds, readPacket, type TableRow } from '@twelvemonth/growing';

interface OwnKinds {
  readonly byId: ReadonlyMap<string, { readonly kind: CropType; readonly rows: readonly TableRow[] }>;
  readonly issues: readonly Issue[];
}

const none: OwnKinds = { byId: new Map(), issues: [] };

function readOwn(entries: readonly OwnKindEntry[]): OwnKinds {
  const byId = new Map<string, { kind: CropType; rows: readonly TableRow[] }>();
  const issues: Issue[] = [];
  entries.forEach((entry, index) => {
    const { id, like, name, packetDays, countedFrom, inRowCm, rowCm, changes } = entry;
    const packet = { id, parent: like, name, packetDays, countedFrom, inRowCm, betweenRowCm: rowCm, changes };
    const { own, warnings } = readPacket(packet);
    const found = 'issues' in own ? [...own.issues, ...warnings] : warnings;
    issues.push(...found.map((issue) => ({ ...issue, where: `ownKinds[${index}]` })));
    if ('kind' in own) byId.set(id, own);
  });
  return { byId, issues };
}

/** Read once a list of own kinds: every look-up after that is a map's. */
const known = new WeakMap<readonly OwnKindEntry[], OwnKinds>();

function ownOf(garden: Garden): OwnKinds {
  if (garden.ownKinds.length === 0) return none;
  let own = known.get(garden.ownKinds);
  if (own === undefined) {
    own = readOwn(garden.ownKinds);
    known.set(garden.ownKinds, own);
  }
  return own;
}

export const ownKindIssues = (garden: Garden): readonly Issue[] => ownOf(garden).issues;

export function kindOf(garden: Garden, id: string): CropType | undefined {
  return ownOf(garden).byId.get(id)?.kind ?? kindById(id);
}

export function kindsOf(garden: Garden): readonly CropType[] {
  return [...allKinds(), ...[...ownOf(garden).byId.values()].map((own) => own.kind)];
}

export function kindIdsOf(garden: Garden): readonly string[] {
  return [...kindIds, ...ownOf(garden).byId.keys()];
}

/** The table rows behind an own kind, undefined for one of the catalogue's. */
export function ownRowsOf(garden: Garden, id: string): readonly TableRow[] | undefined {
  return ownOf(garden).byId.get(id)?.rows;
}
