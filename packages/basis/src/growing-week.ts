import { type Day, isoFromDay } from './plain-day.ts';

/** A week is floor((day + 3) / 7): always Monday to Sunday. It is written as the ISO date of its Monday. */
export type Week = number;

export const weekOfDay = (day: Day): Week => Math.floor((day + 3) / 7);
export const mondayOf = (week: Week): Day => week * 7 - 3;
export const isoOfWeek = (week: Week): string => isoFromDay(mondayOf(week));
