export * from './place.ts';
export * from './place-light.ts';
export * from './place-weather.ts';
