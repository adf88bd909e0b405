import type { Bolting, ColdResponse, Harvest } from './crop-type.ts';
import type { TableReader } from './table-reader.ts';

/** Cold response of a kind, whether it runs to seed or not: gates of heads and bulbs read it too. */
export function assembleCold(read: TableReader): ColdResponse {
  const maximumC = read.number('bolting.cold-maximum-c');
  return {
    baseC: read.number('bolting.cold-base-c'),
    optimumC: read.number('bolting.cold-optimum-c'),
    maximumC,
    undoAboveC: maximumC + read.number('bolting.undo-gap-c'),
    undoPerC: read.number('bolting.undo-per-c'),
  };
}

const needsCold = ({ startGate }: Harvest): boolean =>
  startGate.gate === 'cold' || (startGate.gate === 'day-length' && startGate.coldCDays > 0);

export function assembleBolting(
  read: TableReader,
  cold: ColdResponse,
  harvests: readonly Harvest[],
): Bolting | null {
  const mode = read.text('bolting.mode');
  const bolting = {
    mode: mode as Bolting['mode'],
    effect: read.text('bolting.effect') as Bolting['effect'],
    juvenileDays: read.number('bolting.juvenile-days'),
    juvenileSpreadShare: read.number('bolting.juvenile-spread-share'),
    dayLengthHours: read.number('bolting.day-length-hours'),
    setDaysPerMm: read.number('bolting.set-days-per-mm'),
    sizePower: read.number('bolting.size-power'),
    coldTenthCDays: read.number('bolting.cold-tenth-c-days'),
    coldNineTenthsCDays: read.number('bolting.cold-nine-tenths-c-days'),
    beforeBulbingDays: read.number('bolting.before-bulbing-days'),
    afterDays: read.number('bolting.after-days'),
    edibleShare: read.number('bolting.edible-share'),
  };
  const hasColdRange = cold.baseC < cold.optimumC && cold.optimumC < cold.maximumC;
  const gated = harvests.find(needsCold);
  if (gated !== undefined && !hasColdRange)
    read.complain('table.gate-needs-cold-range', `harvest.${gated.id}.gate`);
  if (mode === 'none') return null;
  if (mode === 'cold' && !hasColdRange)
    read.complain('table.cold-range-disordered', 'bolting.cold-optimum-c');
  if (mode === 'cold' && !(bolting.coldTenthCDays < bolting.coldNineTenthsCDays))
    read.complain('table.cold-shares-disordered', 'bolting.cold-nine-tenths-c-days');
  return bolting;
}
