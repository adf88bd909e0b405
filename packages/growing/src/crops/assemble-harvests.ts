import type { Harvest, HarvestHabit, KeepingRule, KitchenRole, StartGate, StoreId } from './crop-type.ts';
import type { TableReader } from './table-reader.ts';

function assembleGate(read: TableReader, at: string): StartGate {
  const afterDays = read.number(`${at}.gate-after-days`);
  const juvenileDays = read.number(`${at}.gate-juvenile-days`);
  const coldCDays = read.number(`${at}.gate-cold-c-days`);
  const dayLengthHours = read.number(`${at}.gate-day-length-hours`);
  const coldSpreadShare = read.number(`${at}.gate-cold-spread-share`);
  const unchilledYieldShare = read.number(`${at}.unchilled-yield-share`);
  switch (read.text(`${at}.gate`)) {
    case 'cold':
      return { gate: 'cold', juvenileDays, coldCDays, afterDays };
    case 'day-length':
      return {
        gate: 'day-length',
        dayLengthHours,
        juvenileDays,
        coldCDays,
        coldSpreadShare,
        unchilledYieldShare,
        afterDays,
      };
    case 'midwinter':
      return { gate: 'midwinter', afterDays };
    default:
      return { gate: 'none' };
  }
}

const assembleStores = (read: TableReader, at: string): KeepingRule[] =>
  read.namesUnder(`${at}.store.`).map((store) => ({
    store: store as StoreId,
    lifeWeeks: read.number(`${at}.store.${store}.life-weeks`),
    lossPerWeekShare: read.number(`${at}.store.${store}.loss-per-week-share`),
    cureDays: read.number(`${at}.store.${store}.cure-days`),
  }));

function assembleHarvest(read: TableReader, id: string): Harvest {
  const at = `harvest.${id}`;
  const yields = read.range(`${at}.yield-g-per-plant`);
  const after = read.text(`${at}.after`);
  const partFrost = read.text(`${at}.part-frost-c`);
  const standing = read.text(`${at}.standing-days`);
  return {
    id,
    role: read.text(`${at}.role`) as KitchenRole,
    habit: read.text(`${at}.habit`) as HarvestHabit,
    startDays: read.number(`${at}.start-days`),
    after: after === '' ? null : after,
    startGate: assembleGate(read, at),
    windowDays: read.number(`${at}.window-days`),
    standingDays: standing === 'no-limit' ? null : read.number(`${at}.standing-days`),
    yieldGPerPlant: read.number(`${at}.yield-g-per-plant`),
    yieldLowGPerPlant: yields.low,
    yieldHighGPerPlant: yields.high,
    fullDays: read.number(`${at}.full-days`),
    cutDays: read.number(`${at}.cut-days`),
    cutsCount: read.number(`${at}.cuts-count`),
    cutDecayShare: read.number(`${at}.cut-decay-share`),
    thinShare: read.number(`${at}.thin-share`),
    edibleShare: read.number(`${at}.edible-share`),
    eatWithinWeeks: read.number(`${at}.eat-within-weeks`),
    stores: assembleStores(read, at),
    keptBackShare: read.number(`${at}.kept-back-share`),
    establishingShares: [
      read.number(`${at}.first-season-share`),
      read.number(`${at}.second-season-share`),
      read.number(`${at}.third-season-share`),
    ],
    endsPlant: read.yes(`${at}.ends-plant`),
    partFrostC: partFrost === 'as-leaves' ? null : read.number(`${at}.part-frost-c`),
    partFrostDays: read.number(`${at}.part-frost-days`),
  };
}

/** The harvests in the order of the `harvests` row; rows of a harvest that is not listed are a slip. */
export function assembleHarvests(read: TableReader): Harvest[] {
  const ids = read.list('harvests');
  for (const id of read.namesUnder('harvest.'))
    if (!ids.includes(id)) read.complain('table.harvest-not-listed', 'harvests', { harvest: id });
  const harvests = ids.map((id) => assembleHarvest(read, id));
  for (const { id, after } of harvests)
    if (after !== null && (after === id || !ids.includes(after)))
      read.complain('table.harvest-unknown', `harvest.${id}.after`, { harvest: after });
  return harvests;
}
