import type { Band, Day } from '@twelvemonth/basis';
import type { ReportMaterials } from '../report/plan-report.ts';
import type { DarkLine, DarkMonthsPage } from './dark-months.ts';
import type { FridgeItem, FridgePage, WaterLine } from './fridge-page.ts';
import type { HandoverLine } from './handover-lines.ts';
import type { Caution, MonthJob, MonthLine, MonthOrder, MonthSheet } from './month-sheet.ts';
import type { SeedLine, SeedSheet } from './seed-sheet.ts';
import type { CalendarMonth } from './sheet-days.ts';
import type { SheetHead } from './sheet-head.ts';
import type { RoleLane, YearPicture } from './year-picture.ts';

/** Text shows states by signs, a page by weight and line. */
export type Medium = 'text' | 'page';

/** Every word on a sheet comes through here; the catalogues live in the apps. */

export interface DateWords {
  /** "12 Sept" */
  day(day: Day): string;
  /** "12 September 2026" */
  dayInFull(day: Day): string;
  /** "12–26 June", "28 May – 4 June": both ends included. */
  days(from: Day, to: Day): string;
  /** "late Oct – Nov": for stretches longer than some weeks. */
  roughly(from: Day, to: Day): string;
  /** "September 2026" */
  month(month: CalendarMonth): string;
  /** "Sept"; for axes. */
  monthShort(month: number): string;
  /** "Week of 31 August" */
  week(monday: Day): string;
}

export interface MonthWords {
  title(sheet: MonthSheet): string;
  intro(sheet: MonthSheet, medium: Medium): readonly string[];
  areaHeading(area: string, sheet: MonthSheet): string;
  readonly lateHeading: string;
  readonly jobsHeading: string;
  readonly ordersHeading: string;
  readonly handoversHeading: string;
  handover(line: HandoverLine): string;
  readonly nothing: string;
  readonly columns: {
    readonly number: string;
    readonly what: string;
    readonly amount: string;
    readonly how: string;
    readonly where: string;
    readonly eaten: string;
    readonly lastSafe: string;
    readonly mind: string;
    readonly did: string;
  };
  /** Before the cells in the text layout. */
  readonly labels: { readonly eaten: string; readonly lastSafe: string; readonly mind: string };
  what(line: MonthLine): string;
  amount(line: MonthLine): string;
  how(line: MonthLine): string;
  where(line: MonthLine): string;
  eaten(line: MonthLine): string;
  lastSafe(line: MonthLine): string;
  mind(line: MonthLine): string;
  job(job: MonthJob): string;
  /** The same work in the same place on the same day, in one line. */
  jobs(jobs: readonly MonthJob[]): string;
  order(order: MonthOrder): string;
  caution(caution: Caution): string;
  /** One event of a calendar: short, then everything. */
  eventTitle(line: MonthLine): string;
  eventText(line: MonthLine): string;
  jobTitle(job: MonthJob): string;
  orderTitle(order: MonthOrder): string;
}

export interface DarkWords {
  title(page: DarkMonthsPage): string;
  intro(page: DarkMonthsPage): readonly string[];
  readonly columns: {
    readonly number: string;
    readonly what: string;
    readonly count: string;
    readonly where: string;
    readonly comesOut: string;
    readonly sownBy: string;
    readonly feeds: string;
    readonly fortnight: string;
    readonly did: string;
  };
  readonly labels: {
    readonly comesOut: string;
    readonly sownBy: string;
    readonly feeds: string;
    readonly fortnight: string;
  };
  what(line: DarkLine): string;
  count(line: DarkLine): string;
  comesOut(line: DarkLine): string;
  sownBy(line: DarkLine): string;
  feeds(line: DarkLine, page: DarkMonthsPage): string;
  fortnight(line: DarkLine): string;
  readonly standingHeading: string;
  standing(line: DarkLine, page: DarkMonthsPage): string;
  readonly handoversHeading: string;
  handover(line: HandoverLine): string;
  readonly totalsHeading: string;
  total(total: DarkMonthsPage['totals'][number]): string;
  readonly leanHeading: string;
  lean(lean: DarkMonthsPage['lean'][number]): string;
}

export interface FridgeWords {
  title(page: FridgePage): string;
  intro(page: FridgePage): readonly string[];
  readonly eatFirstHeading: string;
  readonly readyHeading: string;
  readonly putByHeading: string;
  readonly leftHeading: string;
  readonly nothing: string;
  eatFirst(item: FridgeItem): string;
  ready(item: FridgeItem): string;
  putBy(item: FridgePage['putBy'][number]): string;
  readonly leftColumns: {
    readonly what: string;
    readonly where: string;
    readonly amount: string;
    readonly until: string;
  };
  leftWhere(where: string): string;
  leftAmount(servings: number, kg: number | null): string;
  leftUntil(from: Day | null, to: Day | null): string;
  neighbourTitle(page: FridgePage): string;
  neighbourIntro(page: FridgePage): readonly string[];
  readonly waterHeading: string;
  water(line: WaterLine): string;
  readonly helpYourselfHeading: string;
  helpYourself(item: FridgeItem): string;
  readonly nightsHeading: string;
  night(job: MonthJob): string;
}

export interface YearWords {
  title(picture: YearPicture): string;
  /** A sentence for those who do not see the picture. */
  describe(picture: YearPicture): string;
  readonly legend: {
    readonly text: readonly string[];
    readonly eaten: string;
    readonly sure: string;
    readonly stock: string;
    readonly appetite: string;
    readonly lean: string;
    readonly bought: string;
    readonly standstill: string;
  };
  laneName(lane: RoleLane): string;
  laneNote(lane: RoleLane): string;
  laneEaten(lane: RoleLane): string;
  perWeek(servings: number): string;
  today(day: Day): string;
  standstill(from: Day, to: Day): string;
  readonly columns: {
    readonly week: string;
    readonly appetite: string;
    readonly bought: string;
    readonly eaten: string;
    readonly fromStock: string;
    readonly stockLeft: string;
    readonly chanceLean: string;
  };
  band(band: Band): string;
  percent(share: number): string;
}

export interface SeedWords {
  title(sheet: SeedSheet): string;
  intro(sheet: SeedSheet): readonly string[];
  readonly columns: {
    readonly what: string;
    readonly need: string;
    readonly inTin: string;
    readonly buy: string;
    readonly orderBy: string;
    readonly firstUse: string;
  };
  readonly materialsHeading: string;
  /** What is wanted by that month, with all before it. */
  material(month: ReportMaterials, litresBefore: number): string;
  need(line: SeedLine): string;
  buy(line: SeedLine): string;
  readonly nothing: string;
}

export interface SheetWords {
  readonly language: string;
  readonly dates: DateWords;
  aside(head: SheetHead): string;
  foot(head: SheetHead): string;
  readonly month: MonthWords;
  readonly dark: DarkWords;
  readonly fridge: FridgeWords;
  readonly year: YearWords;
  readonly seeds: SeedWords;
}
