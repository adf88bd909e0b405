export * from './solver-port.ts';
