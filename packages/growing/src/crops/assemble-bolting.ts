import type { Bolting, Harvest } from './crop-type.ts';
import type { TableReader } from './table-reader.ts';

export function assembleBolting(read: TableReader, harvests: readonly Harvest[]): Bolting | null {
  const mode = read.text('bolting.mode');
  const bolting = {
    mode: mode as Bolting['mode'],
    effect: read.text('bolting.effect') as Bolting['effect'],
    juvenileDays: read.number('bolting.juvenile-days'),
    juvenileSpreadShare: read.number('bolting.juvenile-spread-share'),
    dayLengthHours: read.number('bolting.day-length-hours'),
    coldBaseC: read.number('bolting.cold-base-c'),
    coldOptimumC: read.number('bolting.cold-optimum-c'),
    coldMaximumC: read.number('bolting.cold-maximum-c'),
    coldTenthCDays: read.number('bolting.cold-tenth-c-days'),
    coldNineTenthsCDays: read.number('bolting.cold-nine-tenths-c-days'),
    afterDays: read.number('bolting.after-days'),
    edibleShare: read.number('bolting.edible-share'),
  };
  const { coldBaseC, coldOptimumC, coldMaximumC } = bolting;
  const hasColdRange = coldBaseC < coldOptimumC && coldOptimumC < coldMaximumC;
  const gated = harvests.find((h) => h.startGate.gate === 'cold');
  if (gated !== undefined && (mode === 'none' || !hasColdRange))
    read.complain('table.gate-needs-cold-range', `harvest.${gated.id}.gate`);
  if (mode === 'none') return null;
  if (mode === 'cold' && !hasColdRange)
    read.complain('table.cold-range-disordered', 'bolting.cold-optimum-c');
  if (mode === 'cold' && !(bolting.coldTenthCDays < bolting.coldNineTenthsCDays))
    read.complain('table.cold-shares-disordered', 'bolting.cold-nine-tenths-c-days');
  return bolting;
}
