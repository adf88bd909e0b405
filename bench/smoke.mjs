// npm test runs this through tsx: prints a line a budget, fails when one is broken.
import { smoke } from './smoke.ts';

process.exitCode = (await smoke((line) => console.log(line))) ? 0 : 1;
