/** Which rows a fit may see: decided by a hash of the row's id alone, before any engine is run. docs/decisions/0007. */
import { createHash } from 'node:crypto';

export type Split = 'calibration' | 'held-out';

/** Held out when the SHA-256 of the id (UTF-8), its hex digits read as one whole number, divides by four. */
export function splitOf(id: string): Split {
  const hash = BigInt(`0x${createHash('sha256').update(id, 'utf8').digest('hex')}`);
  return hash % 4n === 0n ? 'held-out' : 'calibration';
}
