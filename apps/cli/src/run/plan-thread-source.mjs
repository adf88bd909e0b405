// Starts the planning thread from its TypeScript source: a worker thread does not inherit the loader.
import { register } from 'tsx/esm/api';

register();
await import('./plan-thread.ts');
