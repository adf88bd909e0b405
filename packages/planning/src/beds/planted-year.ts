import { civilFromDay, type Day } from '@twelvemonth/basis';

const halfYearDays = 182;

/**
 * The year in which a crop counts for rotation: that of its planting. Years turn at midwinter, so that two crops of one
 * summer count once on either half of the globe (south of the equator the year turns on about 1 July).
 */
export function plantedYear(day: Day, latitudeDeg: number): number {
  return civilFromDay(latitudeDeg < 0 ? day + halfYearDays : day).year;
}
