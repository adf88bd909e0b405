/** The two constants of the light response against what growers under cover know of winter. */
import { numberIn, readFigures, sourceText } from '../../figures.ts';
import { februaryRatio, octoberLeadWeeks } from '../../growth/winter-facts.ts';
import type { KindOf } from '../changed-kinds.ts';
import { judgedConstant } from '../constant.ts';
import type { CalibrationProblem } from '../problem.ts';

const ratio = /^growth in a tunnel, late February over midwinter: (\S+) at (\S+)$/;
const lead = /^early carrots in a tunnel, mid-October before mid-February sowing: at (\S+)$/;

function answer(id: string, kindOf: KindOf): number | null {
  const [, kind, station] = ratio.exec(id) ?? [];
  if (kind !== undefined) return februaryRatio(station!, kindOf(kind));
  const [, place] = lead.exec(id) ?? [];
  return place === undefined ? null : octoberLeadWeeks(place, kindOf('carrot-early'));
}

export function winterLightProblem(): CalibrationProblem {
  const figures = readFigures('facts', 'calibration').filter(({ id }) => ratio.test(id) || lead.test(id));
  return {
    name: 'winter light',
    about: 'light factor and light compensation point of all kinds',
    constants: [judgedConstant('*', 'light-factor'), judgedConstant('*', 'light-compensation-mj-per-m2-day')],
    observations: figures.map((figure) => ({
      id: figure.id,
      expected: numberIn(figure, 'expected'),
      sd: numberIn(figure, 'tolerance') / 2,
      source: sourceText(figure),
    })),
    predict: (kindOf) => figures.map(({ id }) => answer(id, kindOf) ?? Number.NaN),
  };
}
