import { type Day, isoFromDay } from '@twelvemonth/basis';
import type { VagueAmount, VagueDay } from '../records/garden.ts';
import { type FilePath, type Report, shown } from './issue-codes.ts';
import { type ReadAmount, readCount, readWeightG } from './vague-amount.ts';
import { readVagueDay } from './vague-day.ts';

/** What the read-* files need to turn written values into records. */
export interface Reading {
  readonly report: Report;
  readonly reference: Day;
  /** What stands was begun by this day. */
  readonly latest: Day;
  readonly southern: boolean;
}

const nothing: VagueAmount = { low: 0, middle: 0, high: 0 };

export function pastTime(
  reading: Reading,
  text: string | null,
  path: FilePath,
  reference: Day = reading.reference,
): VagueDay | null {
  if (text === null) return null;
  const read = readVagueDay(text, { reference, direction: 'past', southern: reading.southern });
  if (read.kind === 'cannot') {
    reading.report(read.reason, path, { found: shown(text) });
    return null;
  }
  if (read.value.fromDay > reading.latest) {
    reading.report('date-in-future', path, { found: shown(text), reference: isoFromDay(reading.latest) });
  }
  return read.value;
}

export function nextTime(
  reading: Reading,
  text: string,
  path: FilePath,
  reference: Day = reading.reference,
): VagueDay | null {
  const read = readVagueDay(text, { reference, direction: 'next', southern: reading.southern });
  if (read.kind === 'done') return read.value;
  reading.report(read.reason, path, { found: shown(text) });
  return null;
}

export function plantsOf(reading: Reading, written: number | string, path: FilePath): VagueAmount {
  return amountOrReport(reading, readCount(written), written, path, '');
}

export function weightOf(
  reading: Reading,
  written: number | string,
  kind: string,
  path: FilePath,
): VagueAmount {
  return amountOrReport(reading, readWeightG(written, kind), written, path, kind);
}

function amountOrReport(
  reading: Reading,
  read: ReadAmount,
  written: number | string,
  path: FilePath,
  kind: string,
): VagueAmount {
  if (typeof read !== 'string') return read;
  if (read === 'amount-needs-a-unit') reading.report(read, path, { found: shown(written), kind });
  else reading.report(read, path, { found: shown(written) });
  return nothing;
}

/** Ids for what people wrote without one: from its words, told apart by a number, the same on every reading. */
export function idMaker(taken: Iterable<string | undefined>): (slug: string) => string {
  const used = new Set(taken);
  const lastNumber = new Map<string, number>();
  return (slug) => {
    let number = lastNumber.get(slug) ?? 0;
    let id = slug;
    do {
      number += 1;
      id = number === 1 ? slug : `${slug}-${number}`;
    } while (used.has(id));
    lastNumber.set(slug, number);
    used.add(id);
    return id;
  };
}
