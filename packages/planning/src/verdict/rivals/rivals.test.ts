import { civilFromDay, dayFromIso, dayOfYear } from '@twelvemonth/basis';
import { describe, expect, it } from 'vitest';
import { leekStripsCount, smallProblem } from '../fixture/small-problem.ts';
import { independentCheck } from '../independent-check.ts';
import { calendarGardener } from './calendar-gardener.ts';
import { windowsInHorizon } from './calendar-windows.ts';
import { practisedGardener } from './practised-gardener.ts';
import { rivalScores } from './rival-scores.ts';

const north = smallProblem(52);
const south = smallProblem(-41);
const rivals = [calendarGardener, practisedGardener];

describe('published windows on real days', () => {
  it('carries a harvest over New Year, and one that follows the year after', () => {
    const windows = windowsInHorizon(north);
    const sprouting = windows.find((w) => w.kind.id === 'broccoli-sprouting' && w.year === 2027)!;
    expect(civilFromDay(sprouting.harvestFromDay).year).toBe(2028);
    const spinach = windows.find((w) => w.kind.id === 'spinach-overwintering' && w.year === 2026)!;
    expect(civilFromDay(spinach.harvestToDay).year).toBe(2027);
    expect(spinach.harvestFromDay).toBeGreaterThan(spinach.sowFromDay);
  });

  it('lies half a year later in the south', () => {
    const sown = (problem: typeof north): number =>
      dayOfYear(windowsInHorizon(problem).find((w) => w.kind.id === 'onion-spring-set')!.sowFromDay);
    expect(sown(north)).toBe(70);
    expect(sown(south)).toBe(70 + 182);
  });
});

describe('the rivals', () => {
  it.each(rivals)('%o keep to ground, bench, wishes and what stands, in both hemispheres', (rival) => {
    for (const problem of [north, south]) {
      const plan = rival(problem);
      expect(plan.sowings).toBeGreaterThan(10);
      expect(independentCheck(problem, plan.placed)).toEqual([]);
    }
  });

  it('clear what may be cleared when they want its ground', () => {
    const leek = calendarGardener(north).placed.find((s) => s.standing)!;
    expect(leek.stripsCount).toBe(leekStripsCount);
    expect(north.standing[0]!.clearDays.indexOf(leek.plan.clearDay!)).toBeLessThan(2);
  });

  it('the calendar gardener sows once in a window, the practised one quick kinds every three weeks', () => {
    const daysOf = (rival: typeof calendarGardener): Map<string, Set<number>> => {
      const days = new Map<string, Set<number>>();
      for (const { plan, standing } of rival(north).placed) {
        if (standing) continue;
        const key = `${plan.kind.id}/${plan.route}/${plan.exposure}/${civilFromDay(plan.startDay).year}`;
        days.set(key, (days.get(key) ?? new Set()).add(plan.startDay));
      }
      return days;
    };
    const once = daysOf(calendarGardener);
    expect(once.size).toBeGreaterThan(10);
    for (const days of once.values()) expect(days.size).toBe(1);
    const practised = [...daysOf(practisedGardener).get('lettuce-leaf/direct/open/2027')!].sort(
      (a, b) => a - b,
    );
    expect(practised.length).toBeGreaterThan(4);
    practised.slice(1).forEach((day, i) => {
      expect((day - practised[i]!) % 21).toBe(0);
    });
  });

  it('the calendar gardener gives equal areas within a season, to a strip', () => {
    const strips = calendarGardener(north)
      .placed.filter((s) => !s.standing && s.ground === 0)
      .filter((s) => {
        const { year, month } = civilFromDay(s.groundFromWeek * 7 - 3);
        return year === 2027 && month >= 4 && month <= 5;
      })
      .map((s) => s.stripsCount);
    expect(strips.length).toBeGreaterThan(4);
    expect(Math.max(...strips) - Math.min(...strips)).toBeLessThanOrEqual(1);
  });

  it('the practised gardener places winter beds first, on two thirds of the open ground free in August', () => {
    // So much appetite that each sowing wants all there is: the ground alone decides.
    const hungry = {
      ...north,
      appetite: { ...north.appetite, garden: north.appetite.garden.map((weeks) => weeks.map((v) => v * 40)) },
    };
    const freeInAugust = hungry.ground[0]!.stripCount - leekStripsCount;
    const winterKinds = new Set(
      windowsInHorizon(hungry)
        .filter((w) => w.row.growsIn === 'open' && w.year === 2026)
        .filter((w) => w.harvestToDay >= dayFromIso('2026-12-01')!)
        .map((w) => w.kind.id),
    );
    const begun = practisedGardener(hungry).placed.filter(
      (s) => !s.standing && s.ground === 0 && civilFromDay(s.plan.startDay).year === 2026,
    );
    const [first] = begun;
    expect(winterKinds.has(first!.plan.kind.id)).toBe(true);
    expect(first!.stripsCount).toBe(Math.floor((2 / 3) * freeInAugust + 1e-9));
  });

  it('are scored like anybody else, and better than nobody', () => {
    const { calendar, practised } = rivalScores(north, north.context, 13, 65);
    for (const score of [calendar, practised]) {
      expect(score.servingsEaten).toBeGreaterThan(50);
      expect(score.groundIdleShare).toBeGreaterThan(0);
      expect(score.groundIdleShare).toBeLessThan(1);
      expect(score.strawMan).toBe(score.kgPerM2Year < 2);
    }
  });
});
