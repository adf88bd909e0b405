import { boltingProbe } from './models/bolting.ts';
import { bulbingProbe } from './models/bulbing.ts';
import { dayLengthProbe } from './models/day-length.ts';
import { degreeDaysProbe } from './models/degree-days.ts';
import { effectiveDayDegreesProbe } from './models/effective-day-degrees.ts';
import { emergenceProbe } from './models/emergence.ts';
import { evapotranspirationProbe } from './models/evapotranspiration.ts';
import { extraterrestrialRadiationProbe } from './models/extraterrestrial-radiation.ts';
import { frostProbe } from './models/frost.ts';
import { growthProbe } from './models/growth.ts';
import { keepingProbe } from './models/keeping.ts';
import { placeWeatherProbe } from './models/place-weather.ts';
import { radiationProbe } from './models/radiation.ts';
import { raisingProbe } from './models/raising.ts';
import { regrowthProbe } from './models/regrowth.ts';
import { soilTemperatureProbe } from './models/soil-temperature.ts';
import { waterProbe } from './models/water.ts';
import { weatherYearsProbe } from './models/weather-years.ts';
import type { ProbeModel } from './probe-model.ts';

/** In the order of the list: sky, weather, place, plant, kitchen. */
export const probeModels: readonly ProbeModel[] = [
  dayLengthProbe,
  extraterrestrialRadiationProbe,
  radiationProbe,
  degreeDaysProbe,
  effectiveDayDegreesProbe,
  evapotranspirationProbe,
  soilTemperatureProbe,
  weatherYearsProbe,
  placeWeatherProbe,
  emergenceProbe,
  raisingProbe,
  growthProbe,
  boltingProbe,
  bulbingProbe,
  frostProbe,
  regrowthProbe,
  keepingProbe,
  waterProbe,
];
