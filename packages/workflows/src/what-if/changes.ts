/** What is to go wrong, made definite: which sowing, which cover, on which day, which members. */
import {
  cannot,
  civilFromDay,
  type Day,
  dayFromCivil,
  done,
  isoFromDay,
  type Outcome,
} from '@twelvemonth/basis';
import type { Garden, GardenCover } from '@twelvemonth/garden';
import {
  extremeOf,
  NEVER,
  type Season,
  type SeasonExtreme,
  seasonAfter,
  seasonValue,
} from '@twelvemonth/growing';
import type { OpenPlan } from '../argue/open-plan.ts';
import { nearestName } from '../issues/nearest-name.ts';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';

export interface WhatIfRequest {
  /** Id or label number of a sowing; null: none is lost. */
  readonly lose: string | null;
  /** Id or name of a cover; null: none is torn. */
  readonly cover: string | null;
  readonly weather: SeasonExtreme | null;
  /** Day of the loss and of the gale; null: the usual one of each. */
  readonly onDay: Day | null;
}

export type WhatIfRefusal =
  | 'nothing-asked'
  | 'sowing-unknown'
  | 'cover-unknown'
  | 'cover-indoors'
  | 'day-outside-plan'
  | 'season-outside-plan';

export interface Loss {
  readonly sowing: ChosenSowing;
  readonly day: Day;
}

export interface Gale {
  readonly cover: GardenCover;
  readonly day: Day;
}

export interface Extreme {
  readonly weather: SeasonExtreme;
  readonly season: Season;
  /** Indices of the members in which it is so. */
  readonly members: readonly number[];
  readonly value: number;
  readonly usual: number;
  /** When it can be seen that this is such a year. */
  readonly knownDay: Day;
}

export interface Changes {
  readonly loss: Loss | null;
  readonly gale: Gale | null;
  readonly extreme: Extreme | null;
  /** When the first of them begins, and the latest of the days on which they are known. */
  readonly firstDay: Day;
  readonly knownDay: Day;
}

/** Middle of the windiest month, northern and southern. Judged: gales are commonest from December to February. */
const galeMonth = { north: 1, south: 7 } as const;
const galeDayOfMonth = 15;

function nextGaleDay(fromDay: Day, southern: boolean): Day {
  const month = southern ? galeMonth.south : galeMonth.north;
  const { year } = civilFromDay(fromDay);
  const day = dayFromCivil(year, month, galeDayOfMonth);
  return day > fromDay ? day : dayFromCivil(year + 1, month, galeDayOfMonth);
}

/** The middle day on which it is first eaten; where it never is, the day it begins. */
function firstEatenDay(sowing: ChosenSowing): Day {
  const days = sowing.runs
    .map((run) => Math.min(...run.harvests.map((harvest) => harvest.firstDay)))
    .sort((a, b) => a - b);
  const middle = days[Math.floor((days.length - 1) / 2)] ?? NEVER;
  return middle < NEVER ? middle : sowing.plan.startDay;
}

function lossOf(plan: OpenPlan, request: WhatIfRequest): Outcome<Loss | null, WhatIfRefusal> {
  const { lose } = request;
  if (lose === null) return done(null);
  const sowing = plan.sowings.find((s) => s.id === lose || String(s.number) === lose);
  if (sowing === undefined) {
    const nearest = nearestName(
      lose,
      plan.sowings.map((s) => s.id),
    );
    return cannot('sowing-unknown', { sowing: lose, nearest });
  }
  const day = request.onDay ?? Math.max(plan.problem.fromDay, firstEatenDay(sowing));
  return done({ sowing, day });
}

const indoors = new Set<GardenCover['material']>(['windowsill', 'heated-mat']);

function galeOf(garden: Garden, plan: OpenPlan, request: WhatIfRequest): Outcome<Gale | null, WhatIfRefusal> {
  const wanted = request.cover?.toLowerCase();
  if (wanted === undefined) return done(null);
  const cover = garden.covers.find((c) => c.id.toLowerCase() === wanted || c.name.toLowerCase() === wanted);
  if (cover === undefined) {
    const names = garden.covers.flatMap((c) => [c.id, c.name]);
    return cannot('cover-unknown', {
      cover: request.cover!,
      nearest: nearestName(wanted, names),
      known: garden.covers.map((c) => c.id).join(', '),
    });
  }
  if (indoors.has(cover.material)) return cannot('cover-indoors', { cover: cover.name });
  const day = request.onDay ?? nextGaleDay(plan.problem.fromDay, garden.site.latitudeDeg < 0);
  return done({ cover, day });
}

function extremeIn(plan: OpenPlan, weather: SeasonExtreme | null): Extreme | null {
  if (weather === null) return null;
  const { context, fromDay } = plan.problem;
  const season = seasonAfter(weather, fromDay, context.site.latitudeDeg < 0);
  const values = context.members.map((member) => seasonValue(member.outdoor, weather, season));
  const members = extremeOf(values);
  const mean = (of: readonly number[]): number => of.reduce((sum, v) => sum + v, 0) / Math.max(1, of.length);
  const knownDay = weather === 'dry-may' ? season.toDay : Math.round((season.fromDay + season.toDay) / 2);
  return {
    weather,
    season,
    members,
    value: mean(members.map((m) => values[m]!)),
    usual: mean(values),
    knownDay,
  };
}

export function changesOf(
  garden: Garden,
  plan: OpenPlan,
  request: WhatIfRequest,
): Outcome<Changes, WhatIfRefusal> {
  const loss = lossOf(plan, request);
  if (loss.kind === 'cannot') return loss;
  const gale = galeOf(garden, plan, request);
  if (gale.kind === 'cannot') return gale;
  const extreme = extremeIn(plan, request.weather);
  const days = [loss.value?.day, gale.value?.day].filter((day) => day !== undefined);
  if (days.length === 0 && extreme === null) return cannot('nothing-asked');
  const { fromDay, shownWeeks } = plan.problem;
  const endDay = fromDay + shownWeeks * 7;
  const span = { from: isoFromDay(fromDay), to: isoFromDay(endDay - 1) };
  for (const day of days)
    if (day < fromDay || day >= endDay) return cannot('day-outside-plan', { day: isoFromDay(day), ...span });
  if (extreme !== null && extreme.season.fromDay >= endDay)
    return cannot('season-outside-plan', { day: isoFromDay(extreme.season.fromDay), ...span });
  const known = extreme === null ? days : [...days, extreme.knownDay];
  const begun = extreme === null ? days : [...days, extreme.season.fromDay];
  return done({
    loss: loss.value,
    gale: gale.value,
    extreme,
    firstDay: Math.max(fromDay, Math.min(...begun)),
    knownDay: Math.max(fromDay, ...known),
  });
}
