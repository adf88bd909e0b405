import { streamFor } from '@twelvemonth/basis';
import type { LinearProgram } from '@twelvemonth/planning';
import { ProgramColumns } from './program-columns.ts';

/**
 * An invented program with the bones of a planting year: whole batches of possible sowings, weekly ground by class,
 * appetite by scenario, week and role, stock that is carried from week to week, and poor years by CVaR.
 * It holds no gardening truth; it is only shaped and sized like the real thing, for measuring solver options.
 */
export interface PlantingShape {
  readonly seed: number;
  readonly candidateCount: number;
  readonly scenarioCount: number;
  readonly weekCount: number;
  readonly roleCount: number;
  readonly storableRoleCount: number;
  readonly groundClassCount: number;
}

export const householdShape: PlantingShape = {
  seed: 11,
  candidateCount: 600,
  scenarioCount: 4,
  weekCount: 104,
  roleCount: 13,
  storableRoleCount: 5,
  groundClassCount: 3,
};

const shortPrice = 1;
const severeShortPrice = 3;
const severeShare = 0.4;
const poorYearWeight = 0.5;
const poorYearAlpha = 0.8;

/** 0 at midwinter, 1 at midsummer, a triangle over the 52 weeks (week 0 = 1 January). */
const warmth = (week: number): number => {
  const intoYear = ((week % 52) + 52) % 52;
  return 1 - Math.abs(intoYear - 26) / 26;
};

export function plantingLikeProgram(shape: PlantingShape): LinearProgram {
  const { scenarioCount, weekCount, roleCount, storableRoleCount, groundClassCount } = shape;
  const draw = streamFor(shape.seed, 'planting-like', 0);
  const round = (x: number): number => Math.round(x * 1024) / 1024;
  const rowLower: number[] = [];
  const rowUpper: number[] = [];
  const addRow = (lower: number, upper: number): number => {
    rowLower.push(lower);
    rowUpper.push(upper);
    return rowLower.length - 1;
  };
  const balanceRow = (s: number, w: number, r: number): number => (s * weekCount + w) * roleCount + r;
  const appetite = (w: number, r: number): number =>
    round(
      (4 + ((r * 5) % 9)) * (r % 3 === 0 ? 0.4 + 0.6 * warmth(w) : r % 3 === 1 ? 1.2 - 0.4 * warmth(w) : 1),
    );
  for (let s = 0; s < scenarioCount; s++)
    for (let w = 0; w < weekCount; w++)
      for (let r = 0; r < roleCount; r++) addRow(appetite(w, r), Number.POSITIVE_INFINITY);
  const groundRows = Array.from({ length: groundClassCount }, (_, k) =>
    Array.from({ length: weekCount }, () => addRow(Number.NEGATIVE_INFINITY, k === 0 ? 60 : 14)),
  );
  const hourRows = Array.from({ length: weekCount }, () => addRow(Number.NEGATIVE_INFINITY, 9));
  const columns = new ProgramColumns();

  for (let i = 0; i < shape.candidateCount; i++) {
    const role = i % roleCount;
    const sowWeek = Math.floor(draw.uniform() * 78);
    const groundClass = draw.uniform() < 0.6 ? 0 : 1 + Math.floor(draw.uniform() * (groundClassCount - 1));
    const growWeeks = Math.round(6 + 14 * draw.uniform() + 10 * (1 - warmth(sowWeek + 8)));
    const spreadWeeks = 1 + Math.floor(draw.uniform() * 9);
    const batchM2 = round(0.25 + 0.75 * draw.uniform());
    const servings = batchM2 * (8 + 22 * draw.uniform());
    const raisedWeeks = Math.floor(draw.uniform() * 6);
    const entries = new Map<number, number>();
    for (let s = 0; s < scenarioCount; s++) {
      const late = Math.round(2.2 * draw.normal());
      const yieldFactor = Math.max(0.2, 1 + 0.25 * draw.normal());
      for (let h = 0; h < spreadWeeks; h++) {
        const w = sowWeek + growWeeks + late + h;
        if (w < 0 || w >= weekCount) continue;
        entries.set(balanceRow(s, w, role), round((servings * yieldFactor) / spreadWeeks));
      }
    }
    const clearWeek = Math.min(weekCount, sowWeek + growWeeks + spreadWeeks + 2);
    for (let w = sowWeek + raisedWeeks; w < clearWeek; w++) {
      const row = groundRows[groundClass]?.[w];
      if (row !== undefined) entries.set(row, batchM2);
    }
    for (const w of [sowWeek, sowWeek + raisedWeeks, sowWeek + growWeeks]) {
      const row = hourRows[w];
      if (row !== undefined) entries.set(row, round((entries.get(row) ?? 0) + 0.15 + 0.3 * draw.uniform()));
    }
    const mostBatches = 4 + Math.floor(draw.uniform() * 10);
    if (i % 10 === 0) {
      const link = addRow(Number.NEGATIVE_INFINITY, 0);
      const least = addRow(0, Number.POSITIVE_INFINITY);
      entries.set(link, 1).set(least, 1);
      columns.add(
        round(0.5 + draw.uniform()),
        0,
        1,
        true,
        new Map([
          [link, -mostBatches],
          [least, -2],
        ]),
      );
    }
    columns.add(round(0.2 + 0.4 * draw.uniform()), 0, mostBatches, true, entries);
  }

  const share = 1 / scenarioCount;
  const etaEntries = new Map<number, number>();
  for (let s = 0; s < scenarioCount; s++) {
    const poorRow = addRow(0, Number.POSITIVE_INFINITY);
    etaEntries.set(poorRow, 1);
    columns.add(
      round((poorYearWeight * share) / (1 - poorYearAlpha)),
      0,
      Number.POSITIVE_INFINITY,
      false,
      new Map([[poorRow, 1]]),
    );
    for (let w = 0; w < weekCount; w++)
      for (let r = 0; r < roleCount; r++) {
        const here = balanceRow(s, w, r);
        const severe = r % 4 === 0 ? severeShare * appetite(w, r) : 0;
        columns.add(
          round(share * shortPrice),
          0,
          appetite(w, r) - severe,
          false,
          new Map([
            [here, 1],
            [poorRow, -shortPrice],
          ]),
        );
        if (severe > 0)
          columns.add(
            round(share * severeShortPrice),
            0,
            severe,
            false,
            new Map([
              [here, 1],
              [poorRow, -severeShortPrice],
            ]),
          );
        if (r < storableRoleCount && w + 1 < weekCount)
          columns.add(
            0,
            0,
            250,
            false,
            new Map([
              [here, -1],
              [balanceRow(s, w + 1, r), 0.97],
            ]),
          );
      }
  }
  columns.add(poorYearWeight, 0, Number.POSITIVE_INFINITY, false, etaEntries);
  return columns.program(rowLower, rowUpper);
}
