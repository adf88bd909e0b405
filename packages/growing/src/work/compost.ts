/** Compost by the litre, from tables/work.csv. */
import { workTable } from '../generated/work.ts';

const { compost } = workTable;

export const moduleCompostLitresPerM2 = compost['module-litres-per-m2'];
export const potCompostLitresPerM2 = compost['pot-litres-per-m2'];
export const seedTrayCompostLitresPerM2 = compost['seed-tray-litres-per-m2'];
/** Share of a tub renewed for each new crop. */
export const tubRenewedShare = compost['tub-renewed-share'];
/** Room of a seedling in a seed tray against that in a module. */
export const seedlingOfModuleShare = workTable.mat['m2-per-plant-share'];
