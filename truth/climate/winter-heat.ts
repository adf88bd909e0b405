import { civilFromDay, dayFromCivil } from '../../packages/basis/src/index.ts';
import { stationById, weatherMembers } from '../../packages/growing/src/climate/index.ts';
import { effectiveDayDegrees } from '../../packages/growing/src/growth/light-limited-heat.ts';
import { placeWeather } from '../../packages/growing/src/places/index.ts';
import { type Answer, answers } from '../facts.ts';
import { meanAt } from './weather-statistics.ts';

const [lightFactor, compensationMJPerM2Day] = [0.8, 0.6];

/** Daily effective heat in an unheated tunnel: late February against midwinter, from generated weather. */
export function winterHeatAnswers(): Answer[] {
  const row = answers('effective heat in a tunnel, late February over midwinter');
  return ['dublin', 'valentia'].map((id) => {
    const { site, normals, name } = stationById(id)!;
    const outdoor = weatherMembers({
      site,
      source: { kind: 'normals', normals },
      seed: 3,
      purpose: 'plan',
      memberCount: 1,
      startDay: dayFromCivil(2001, 1, 1),
      dayCount: 73_049,
    })[0]!;
    const cover = { id: 't', material: 'polytunnel', ageYears: 2, ventAboveC: null, faces: null } as const;
    const exposure = {
      cover,
      winterSun: 'all',
      aspect: 'flat',
      frostPocket: false,
      wet: false,
      windy: false,
      watered: true,
    } as const;
    const inside = placeWeather(site, outdoor, exposure, 0);
    const heat = inside.tmaxC.map((tmax, i) =>
      effectiveDayDegrees(
        (tmax + inside.tminC[i]!) / 2,
        inside.radiation7MJPerM2Day[i]!,
        lightFactor,
        compensationMJPerM2Day,
      ),
    );
    const midwinter: number[] = [];
    const lateFebruary: number[] = [];
    for (let i = 7; i < heat.length; i++) {
      const { month, dayOfMonth } = civilFromDay(outdoor.startDay + i);
      if ((month === 12 && dayOfMonth >= 15) || (month === 1 && dayOfMonth <= 15)) midwinter.push(i);
      if (month === 2 && dayOfMonth >= 19) lateFebruary.push(i);
    }
    return row(name, meanAt(heat, lateFebruary) / meanAt(heat, midwinter));
  });
}
