export { runTui } from './program/run.js';
