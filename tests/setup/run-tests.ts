/** `npm test`: every test, then the total of the runner's own report. Arguments go to Vitest. */
import { printTotal, report } from './report.js';
import { runVitest } from './run-vitest.js';

runVitest(process.argv.slice(2), report);
printTotal([report]);
