/** How much cold it takes to make plants of full size run to seed, at steady temperatures. */
import { coldUnitsCDays, kindById } from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';

interface Cold {
  /** Units a day against the best temperature. */
  shareAt(meanC: number): number;
  /** Days until half of the plants have had enough. */
  daysAt(meanC: number): number;
}

function coldOf(id: string): Cold {
  const kind = kindById(id);
  const bolting = kind?.bolting;
  if (kind === undefined || bolting?.mode !== 'cold')
    return { shareAt: () => Number.NaN, daysAt: () => Number.NaN };
  const triangle = kind.cold;
  const best = coldUnitsCDays(triangle, triangle.optimumC);
  const half = (bolting.coldTenthCDays + bolting.coldNineTenthsCDays) / 2;
  return {
    shareAt: (meanC) => coldUnitsCDays(triangle, meanC) / best,
    daysAt: (meanC) => half / coldUnitsCDays(triangle, meanC),
  };
}

export function coldOfBoltingAnswers(): Answer[] {
  const share = answers('cold that makes plants bolt, share of the best rate');
  const days = answers('cold that makes plants bolt, days until half have had enough');
  const [leek, onion, carrot] = [coldOf('leek'), coldOf('onion-autumn-red'), coldOf('carrot-maincrop')];
  return [
    share('leek at 19 °C', leek.shareAt(19)),
    share('leek at 6 °C', leek.shareAt(6)),
    share('red onion at 17.5 °C', onion.shareAt(17.5)),
    share('red onion at −1 °C', onion.shareAt(-1)),
    days('leek at 7 °C', leek.daysAt(7)),
    days('red onion at 9 °C', onion.daysAt(9)),
    days('carrot at 6.5 °C', carrot.daysAt(6.5)),
  ];
}
