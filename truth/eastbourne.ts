/** The mild south coast near 51° N that the trade's check values are meant for: a station of our table. */
import { stationById } from '../packages/growing/src/index.ts';

const found = stationById('eastbourne');
if (found === null) throw new Error('the table of stations has no eastbourne');
export const eastbourne = found;
