/** Covers: light through them by material and age, and how much warmer it is under them in a year of weather. */

import { dayFromCivil } from '../../packages/basis/src/index.ts';
import { weatherMembers } from '../../packages/growing/src/climate/index.ts';
import {
  type CoverInstance,
  coverLightShare,
  type PlaceWeather,
  placeWeather,
  stationById,
} from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';
import { numberIn, readFigures, sourceText } from '../figures.ts';
import type { Split } from '../split.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

const coverOf = (material: CoverInstance['material'], ageYears: number): CoverInstance => ({
  id: material,
  material,
  ageYears,
  ventAboveC: null,
  faces: null,
});

export function coverLightRows(split: Split): TruthRow[] {
  return readFigures('cover-light', split).map((figure) => {
    const cover = coverOf(figure.material as CoverInstance['material'], numberIn(figure, 'ageYears'));
    const row = truthRows('light through a cover', '1', sourceText(figure));
    const name = figure.id.slice(figure.id.indexOf(': ') + 2);
    const share = coverLightShare(cover, 40);
    return {
      ...row(name, numberIn(figure, 'share'), share, numberIn(figure, 'tolerance')),
      figure: figure.id,
    };
  });
}

/** Mean of a difference over the days that are picked. */
function meanLift(
  pick: (outdoor: PlaceWeather, i: number) => boolean,
  lift: (inside: PlaceWeather, outdoor: PlaceWeather, i: number) => number,
  material: CoverInstance['material'],
): number {
  const { site, normals } = stationById('dublin')!;
  const weather = weatherMembers({
    site,
    source: { kind: 'normals', normals },
    seed: 3,
    purpose: 'plan',
    memberCount: 1,
    startDay: dayFromCivil(2001, 1, 1),
    dayCount: 7305,
  })[0]!;
  const place = (cover: CoverInstance): PlaceWeather =>
    placeWeather(
      site,
      weather,
      {
        cover,
        winterSun: 'all',
        aspect: 'flat',
        frostPocket: false,
        wet: false,
        windy: false,
        watered: true,
      },
      0,
    );
  const [inside, outdoor] = [place(coverOf(material, 2)), place(coverOf('open', 0))];
  let [sum, count] = [0, 0];
  for (let i = 0; i < outdoor.tminC.length; i++) {
    if (!pick(outdoor, i)) continue;
    sum += lift(inside, outdoor, i);
    count++;
  }
  return sum / count;
}

export function coverLiftAnswers(): Answer[] {
  const answer = answers('warmer under a cover than outside');
  const always = (): boolean => true;
  const frost = (outdoor: PlaceWeather, i: number): boolean => outdoor.tminC[i]! < 0;
  const ofMin = (a: PlaceWeather, b: PlaceWeather, i: number): number => a.tminC[i]! - b.tminC[i]!;
  const ofMax = (a: PlaceWeather, b: PlaceWeather, i: number): number => a.tmaxC[i]! - b.tmaxC[i]!;
  const ofMean = (a: PlaceWeather, b: PlaceWeather, i: number): number =>
    (ofMin(a, b, i) + ofMax(a, b, i)) / 2;
  return [
    answer('minimum, polytunnel, frosty nights', meanLift(frost, ofMin, 'polytunnel')),
    answer('maximum, polytunnel', meanLift(always, ofMax, 'polytunnel')),
    answer('mean, polytunnel', meanLift(always, ofMean, 'polytunnel')),
    answer('mean, fleece', meanLift(always, ofMean, 'fleece')),
    answer('minimum, fleece, frosty nights', meanLift(frost, ofMin, 'fleece')),
  ];
}
