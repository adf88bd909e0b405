import { dampedWave, dampingDepthCm } from '../../packages/growing/src/climate/index.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

export function soilRows(): TruthRow[] {
  const source = 'Rain or Shine (Oklahoma State University open text) 13.4, diffusivity 0.5e-6 m2/s';
  const depth = truthRows('damping depth', 'cm', source);
  const daily = dampingDepthCm(0.5e-6, 1);
  const wave = truthRows('amplitude at 10 cm of a 7 °C daily wave', '°C', source);
  return [
    depth('daily', 11.7, daily, 0.117),
    depth('annual', 224.1, dampingDepthCm(0.5e-6, 365), 2.24),
    wave('d 11.7 cm', 2.98, 7 * dampedWave(10, 11.7, 1).amplitudeShare, 0.01),
    truthRows('lag at 10 cm of the daily wave', 'h', source)(
      'd 11.7 cm',
      3.26,
      dampedWave(10, 11.7, 1).lagDays * 24,
      0.02,
    ),
  ];
}
