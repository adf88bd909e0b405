import type { CalibrationProblem } from '../problem.ts';
import { harvestMiddleProblems } from './harvest-middles.ts';
import { winterLightProblem } from './winter-light.ts';

export const calibrationProblems = (): CalibrationProblem[] => [
  winterLightProblem(),
  ...harvestMiddleProblems(),
];
