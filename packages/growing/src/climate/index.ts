export * from './climate.ts';
export * from './degree-days.ts';
export * from './evapotranspiration.ts';
export * from './radiation.ts';
export * from './soil-temperature.ts';
export * from './stations.ts';
export * from './sun.ts';
