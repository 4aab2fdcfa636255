export { runTui } from './practice/run.js';
