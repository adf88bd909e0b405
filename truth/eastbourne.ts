/**
 * Monthly means of Eastbourne, 1991–2020: the mild south coast near 51° N that the trade's check values are meant for.
 * Taken from the UK Met Office's historic station data (Open Government Licence v3). Days of rain are not in it.
 */
import type { MonthlyNormals, Site } from '../packages/growing/src/index.ts';

export const eastbourne: { readonly site: Site; readonly normals: MonthlyNormals } = {
  site: { latitudeDeg: 50.762, longitudeDeg: 0.285, elevationM: 7, coastal: true },
  normals: {
    tmaxC: [8.5, 8.6, 10.5, 13.3, 16.3, 18.9, 21.0, 21.3, 19.2, 15.7, 11.9, 9.3],
    tminC: [3.9, 3.6, 4.9, 6.7, 9.6, 12.5, 14.7, 14.9, 12.6, 9.9, 6.9, 4.5],
    rainMm: [82.9, 58.4, 48.0, 44.6, 45.5, 46.9, 53.9, 60.0, 59.9, 93.1, 98.1, 100.3],
    sunHours: [69.7, 90.4, 134.3, 202.5, 235.6, 238.6, 252.1, 232.7, 172.4, 121.4, 77.5, 61.5],
    radiationMJPerM2Day: Array(12).fill(null),
    wetDaysCount: Array(12).fill(null),
  },
};
