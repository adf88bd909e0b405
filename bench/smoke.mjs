// npm test runs this: prints a line a budget, fails when one is broken. Works with and without `--import tsx`.
import { register } from 'tsx/esm/api';

register();
const { smoke } = await import('./smoke.ts');
process.exitCode = (await smoke((line) => console.log(line))) ? 0 : 1;
