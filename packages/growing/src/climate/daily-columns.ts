/** Which column of a daily weather file holds what: header names are taken as people and weather services write them. */
export type DailyColumn = 'date' | 'tmaxC' | 'tminC' | 'rainMm' | 'radiationMJPerM2Day' | 'sunHours';

const namesOf: Readonly<Record<DailyColumn, readonly string[]>> = {
  date: ['date', 'day', 'datum', 'time'],
  tmaxC: ['tmaxc', 'tmax', 'maxtp', 'maxtemp', 'tempmax', 'tx', 'temperature2mmax', 'temperature2mmaxc'],
  tminC: ['tminc', 'tmin', 'mintp', 'mintemp', 'tempmin', 'tn', 'temperature2mmin', 'temperature2mminc'],
  rainMm: [
    'rainmm',
    'rain',
    'precipitation',
    'precip',
    'prcp',
    'rr',
    'precipitationsum',
    'precipitationsummm',
  ],
  radiationMJPerM2Day: [
    'radmj',
    'rad',
    'radiation',
    'radiationmj',
    'shortwaveradiationsum',
    'shortwaveradiationsummjm',
  ],
  sunHours: ['sunh', 'sun', 'sunhours', 'sunshine', 'sunshinehours'],
};

export const requiredColumns: readonly DailyColumn[] = ['date', 'tmaxC', 'tminC', 'rainMm'];

/** Values outside these are taken as slips and left out. */
export const possibleValues: Readonly<Record<Exclude<DailyColumn, 'date'>, readonly [number, number]>> = {
  tmaxC: [-60, 60],
  tminC: [-70, 45],
  rainMm: [0, 600],
  radiationMJPerM2Day: [0, 45],
  sunHours: [0, 24],
};

export function separatorOf(header: string): string {
  for (const separator of ['\t', ';']) if (header.includes(separator)) return separator;
  return ',';
}

export function columnsOf(header: readonly string[]): Partial<Record<DailyColumn, number>> {
  const found: Partial<Record<DailyColumn, number>> = {};
  header.slice(0, 200).forEach((cell, index) => {
    const name = cell.toLowerCase().replaceAll(/[^a-z0-9]/g, '');
    for (const column of Object.keys(namesOf) as DailyColumn[]) {
      if (found[column] === undefined && namesOf[column].includes(name)) found[column] = index;
    }
  });
  return found;
}
