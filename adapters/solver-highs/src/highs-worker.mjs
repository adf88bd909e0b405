// Runs HiGHS off the calling thread. Plain JavaScript on purpose: this very file is copied beside a bundle.
// What it receives and sends is described in worker-messages.ts.
import { parentPort, workerData } from 'node:worker_threads';
import loadHighs from 'highs';

const stopFlag = new Int32Array(workerData.stopBuffer);
const highs = await loadHighs();
const { modelStatus, callbackType, solutionStatus } = highs.constants;

const modelData = (program, whole) => ({
  numCols: program.colCost.length,
  numRows: program.rowLower.length,
  colCost: program.colCost,
  colLower: program.colLower,
  colUpper: program.colUpper,
  rowLower: program.rowLower,
  rowUpper: program.rowUpper,
  ...(whole ? { integrality: Int32Array.from(program.colWhole) } : {}),
  matrix: {
    format: 'csc',
    numCols: program.colCost.length,
    numRows: program.rowLower.length,
    starts: program.starts,
    indices: program.indices,
    values: program.values,
  },
});

const finite = (x) => (Number.isFinite(x) && Math.abs(x) < 1e19 ? x : null);
const count = (model, name) => Math.max(0, Number(model.info.get(name)));
const iterationsOf = (model) =>
  count(model, 'simplex_iteration_count') +
  count(model, 'ipm_iteration_count') +
  count(model, 'crossover_iteration_count');

/** The solver allows whole columns a hair off whole; callers get them exactly whole. */
const wholeExactly = (colValue, colWhole) =>
  Float64Array.from(colValue, (v, j) => (colWhole[j] === 1 ? Math.round(v) : v));

/** "Unbounded or infeasible" is settled by asking for any point at all. */
function isInfeasible(program, whole) {
  const anyPoint = { ...program, colCost: new Float64Array(program.colCost.length) };
  return highs.withModel(modelData(anyPoint, whole), (model) => {
    model.options.set({ output_flag: false });
    model.run();
    return model.getModelStatus() === modelStatus.infeasible;
  });
}

function statusOf(status, gap, stopped, program, whole) {
  if (status === modelStatus.optimal) return gap <= 1e-9 ? 'optimal' : 'gap';
  if (status === modelStatus.infeasible) return 'infeasible';
  if (status === modelStatus.unboundedOrInfeasible)
    return isInfeasible(program, whole) ? 'infeasible' : 'failed';
  if (status === modelStatus.timeLimit) return 'time';
  if (status === modelStatus.iterationLimit || status === modelStatus.solutionLimit) return 'limit';
  if (status === modelStatus.interrupted) return stopped ? 'stopped' : 'limit';
  return 'failed';
}

function interruptsFor(lpIterations) {
  const stopNow = (event) => {
    const spent = event.data.mip_total_lp_iterations;
    const overspent = lpIterations !== null && spent !== undefined && Number(spent) >= lpIterations;
    if (overspent || Atomics.load(stopFlag, 0) === 1) event.interrupt();
  };
  return {
    [callbackType.mipInterrupt]: stopNow,
    [callbackType.simplexInterrupt]: stopNow,
    [callbackType.ipmInterrupt]: stopNow,
  };
}

function callbacksFor(task) {
  return {
    ...interruptsFor(task.lpIterations),
    [callbackType.mipImprovingSolution](event) {
      const { mip_primal_bound, mip_dual_bound, mip_total_lp_iterations, mip_solution } = event.data;
      parentPort.postMessage({
        kind: 'improved',
        progress: { objective: mip_primal_bound, bound: mip_dual_bound },
        colValue: mip_solution ? wholeExactly(mip_solution, task.program.colWhole) : null,
        iterations: Number(mip_total_lp_iterations ?? 0),
      });
    },
  };
}

function solve(task) {
  const { program, limits, start } = task;
  const whole = program.colWhole.some((w) => w === 1);
  return highs.withModel(modelData(program, whole), (model) => {
    model.options.set({
      output_flag: false,
      random_seed: limits.randomSeed,
      ...(whole ? task.options.mip : task.options.lp),
      ...(whole ? { mip_rel_gap: limits.gapShare, mip_max_nodes: limits.nodes } : {}),
      ...(limits.timeLimitSeconds === null ? {} : { time_limit: limits.timeLimitSeconds }),
    });
    if (whole && start !== null) model.setSolution({ colValue: start });
    model.run(callbacksFor(task));
    const stopped = Atomics.load(stopFlag, 0) === 1;
    const gap = whole ? model.info.get('mip_gap') : 0;
    const status = statusOf(model.getModelStatus(), gap, stopped, program, whole);
    const hasPoint =
      status !== 'infeasible' && model.info.get('primal_solution_status') === solutionStatus.feasible;
    const objective = hasPoint ? finite(model.getObjectiveValue()) : null;
    return {
      status,
      colValue: hasPoint ? wholeExactly(model.getSolution().colValue, program.colWhole) : null,
      objective,
      bound: whole ? finite(model.info.get('mip_dual_bound')) : status === 'optimal' ? objective : null,
      iterations: iterationsOf(model),
    };
  });
}

function relaxationOf(model, isInfeasibleProgram) {
  model.run(interruptsFor(null));
  const found = model.getModelStatus();
  const iterations = iterationsOf(model);
  const none = { colValue: null, objective: null, rowDual: null, iterations };
  if (found === modelStatus.optimal) {
    const { colValue, rowDual } = model.getSolution();
    return {
      status: 'optimal',
      colValue: Float64Array.from(colValue),
      objective: model.getObjectiveValue(),
      rowDual: Float64Array.from(rowDual),
      iterations,
    };
  }
  const infeasible =
    found === modelStatus.infeasible ||
    (found === modelStatus.unboundedOrInfeasible && isInfeasibleProgram());
  return { ...none, status: infeasible ? 'infeasible' : 'failed' };
}

function relax({ program, options }) {
  return highs.withModel(modelData(program, false), (model) => {
    model.options.set({ output_flag: false, ...options.lp });
    return relaxationOf(model, () => isInfeasible(program, false));
  });
}

/** The relaxation that is kept between tasks, or null. */
let kept = null;

function dropKept() {
  kept?.model.dispose();
  kept = null;
}

function keep({ program, options }) {
  dropKept();
  const model = highs.createModel(modelData(program, false));
  model.options.set({ output_flag: false, ...options.lp });
  kept = { model, options, columns: program.colCost.length, rows: program.rowLower.length };
}

function growKept({ growth }) {
  const { model, options } = kept;
  const newRows = growth.rowLower.length;
  if (newRows > 0)
    model.addRows({
      lower: growth.rowLower,
      upper: growth.rowUpper,
      matrix: {
        format: 'csr',
        numRows: newRows,
        numCols: kept.columns,
        starts: new Int32Array(newRows + 1),
        indices: new Int32Array(0),
        values: new Float64Array(0),
      },
    });
  kept.rows += newRows;
  const numCols = growth.colCost.length;
  model.addCols({
    cost: growth.colCost,
    lower: growth.colLower,
    upper: growth.colUpper,
    matrix: {
      format: 'csc',
      numCols,
      numRows: kept.rows,
      starts: growth.starts,
      indices: growth.indices,
      values: growth.values,
    },
  });
  kept.columns += numCols;
  model.options.set(options.grownLp);
}

function changeKept({ changes: { columns, lower, upper, cost } }) {
  const { model, options } = kept;
  const set = { kind: 'set', indices: columns };
  model.changeColsBounds(set, lower, upper);
  if (cost !== null) model.changeColsCost(set, cost);
  model.options.set(cost === null ? options.boundedLp : options.grownLp);
}

function answerTo(task) {
  switch (task.kind) {
    case 'solve':
      return { kind: 'solved', answer: solve(task) };
    case 'relax':
      return { kind: 'relaxed', answer: relax(task) };
    case 'keep':
      keep(task);
      return { kind: 'done' };
    case 'grow':
      growKept(task);
      return { kind: 'done' };
    case 'change':
      changeKept(task);
      return { kind: 'done' };
    case 'relax-kept':
      return { kind: 'relaxed', answer: relaxationOf(kept.model, () => false) };
    default:
      dropKept();
      return { kind: 'done' };
  }
}

/** A program the library refuses is a mistake to report; anything else ends this thread, whose memory is then doubtful. */
function reply(task) {
  try {
    return answerTo(task);
  } catch (error) {
    if (error instanceof highs.errors.HighsValidationError) return { kind: 'refused', reason: error.message };
    throw error;
  }
}

parentPort.on('message', (task) => parentPort.postMessage(reply(task)));
parentPort.postMessage({ kind: 'ready' });
