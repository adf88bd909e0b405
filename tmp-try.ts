import { demoProblem } from './bench/demo-problem.ts';
import { previewFigures } from './bench/preview.bench.ts';
import { referenceMs } from './bench/reference-loop.ts';

const demo = demoProblem('marram-end', 4);
for (let i = 0; i < 3; i++) {
  const a = referenceMs();
  const p = previewFigures(demo, 200, 30);
  const b = referenceMs();
  console.log(a, b, p, p.previewMs / Math.max(a, b));
}
