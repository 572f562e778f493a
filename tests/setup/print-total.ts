/** Prints `N passed, N failed` from the last run's report; fails when a test failed or did not run, or none ran. */
import { report, total } from './report.js';

const { passed, failed, skipped } = total(report);
if (skipped > 0) console.log(`${skipped} tests were skipped, and none may be`);
if (failed > 0 || skipped > 0 || passed === 0) process.exitCode = 1;
console.log(`${passed} passed, ${failed} failed`);
