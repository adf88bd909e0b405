export * from './solver-port.ts';
export { solverContract, type TestKit } from './solve/solver-contract.ts';
export { stubSolver } from './solve/stub-solver.ts';
