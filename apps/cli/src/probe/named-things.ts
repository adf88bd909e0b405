import { type CropType, kindById, kindIds, stationById, stationIds } from '@twelvemonth/growing';
import { nearestName } from './nearest-name.ts';
import { ProbeRefusal } from './probe-model.ts';

const perhaps = (written: string, names: readonly string[]): string => {
  const nearest = nearestName(written, names);
  return nearest === null ? '' : ` Was "${nearest}" meant?`;
};

export function kindNamed(id: string): CropType {
  const kind = kindById(id);
  if (kind === undefined)
    throw new ProbeRefusal(
      'kind',
      `There is no kind "${id}".${perhaps(id, kindIds)} Run "twelvemonth kinds" for the list.`,
    );
  return kind;
}

export function harvestNamed(kind: CropType, id: string): CropType['harvests'][number] {
  const ids = kind.harvests.map((harvest) => harvest.id);
  const harvest = kind.harvests.find((one) => one.id === id);
  if (harvest === undefined)
    throw new ProbeRefusal(
      'harvest',
      `"${kind.id}" has no harvest "${id}".${perhaps(id, ids)} Its harvests: ${ids.join(', ')}.`,
    );
  return harvest;
}

export function stationNamed(id: string): NonNullable<ReturnType<typeof stationById>> {
  const station = stationById(id);
  if (station === null)
    throw new ProbeRefusal(
      'station',
      `There is no station "${id}".${perhaps(id, stationIds)} Stations: ${stationIds.join(', ')}.`,
    );
  return station;
}

export function needed<Value>(value: Value | undefined, input: string, why: string): Value {
  if (value === undefined)
    throw new ProbeRefusal(input, `Input "${input}" is missing: ${why}. Add "${input}".`);
  return value;
}

export function sound(holds: boolean, input: string, sentence: string): void {
  if (!holds) throw new ProbeRefusal(input, sentence);
}

export function risingTemperatures(tminC: number, tmaxC: number): void {
  sound(
    tminC <= tmaxC,
    'tminC',
    `Input "tminC" (${tminC} °C) is above "tmaxC" (${tmaxC} °C). The minimum of a day must not exceed its maximum: mend one of them.`,
  );
}

/** One value for each day of a run. */
export const spread = (value: number | readonly number[], days: number): Float64Array =>
  Float64Array.from({ length: days }, (_, i) => (typeof value === 'number' ? value : value[i]!));

/** Length of a run whose inputs are single numbers or arrays: the arrays must agree. */
export function daysOf(
  inputs: Readonly<Record<string, number | readonly number[]>>,
  ifConstant: number,
): number {
  let found: { readonly name: string; readonly length: number } | null = null;
  for (const [name, value] of Object.entries(inputs)) {
    if (typeof value === 'number') continue;
    if (found !== null && found.length !== value.length)
      throw new ProbeRefusal(
        name,
        `Input "${name}" has ${value.length} days and "${found.name}" has ${found.length}. Give both the same number of days.`,
      );
    found = { name, length: value.length };
  }
  return found?.length ?? ifConstant;
}
