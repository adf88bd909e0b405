import { z } from 'zod';

/** Inputs that several models share: meaning, unit and range in one place. */
const number = (least: number, most: number, meaning: string) =>
  z.number().min(least).max(most).describe(meaning);
const series = (least: number, most: number, meaning: string, mostDays = 4000) =>
  z.array(z.number().min(least).max(most)).min(1).max(mostDays).describe(meaning);

export const measured = number;
export const whole = (least: number, most: number, meaning: string) =>
  z.int().min(least).max(most).describe(meaning);
export const daily = series;
export const oneOf = <const Names extends readonly [string, ...string[]]>(names: Names, meaning: string) =>
  z.enum(names).describe(meaning);
export const yesNo = (meaning: string) => z.boolean().describe(meaning);

export const latitudeDeg = number(-90, 90, 'latitude, degrees, south negative');
export const dayOfYear = whole(1, 366, 'day of the year, 1 January = 1');
export const tminC = number(-70, 60, 'minimum of the day, °C');
export const tmaxC = number(-70, 60, 'maximum of the day, °C');
export const elevationM = number(-450, 6000, 'height above sea, m');
export const radiationMJPerM2Day = number(0, 50, 'global radiation, MJ/m²/day');
export const kindField = z.string().describe('id of a kind (see: twelvemonth kinds)');
export const isoDay = (meaning: string) => z.iso.date().describe(`${meaning}, as 2027-02-20`);
/** One value for every day, or one value a day. */
export const constantOrDaily = (least: number, most: number, meaning: string) =>
  z
    .union([z.number().min(least).max(most), z.array(z.number().min(least).max(most)).min(1).max(4000)])
    .describe(`${meaning}; one number, or one a day`);
