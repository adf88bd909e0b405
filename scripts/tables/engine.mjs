// The crops modules of the growing package, so that the compiler reads a kind exactly as the engine does.
import { register } from 'tsx/esm/api';

const crops = new URL('../../packages/growing/src/crops/', import.meta.url);

// calendar.ts and its like import the generated catalogue, which may not be there before the first run.
export async function loadEngine() {
  const unregister = register();
  const names = [
    'parameter-spec',
    'effective-rows',
    'assemble-kind',
    'table-reader',
    'table-types',
    'assemble-subjects',
  ];
  const modules = await Promise.all(names.map((name) => import(new URL(`${name}.ts`, crops).href)));
  await unregister();
  return Object.assign({}, ...modules);
}
