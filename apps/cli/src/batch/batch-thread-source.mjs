// Starts a thread of the pool from its TypeScript source: a worker thread does not inherit the loader.
import { register } from 'tsx/esm/api';

register();
const { default: planOne } = await import('./batch-thread.ts');
export default planOne;
