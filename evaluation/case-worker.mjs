// A pool thread: TypeScript is read through tsx, which a thread does not inherit. Steps go back over the task's port.
import { register } from 'tsx/esm/api';

register();
const { measureCase } = await import('./measure-case.ts');

export default async ({ port, ...task }) => {
  try {
    return await measureCase(task, (step) => port.postMessage(step));
  } finally {
    port.close();
  }
};
