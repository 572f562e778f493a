/** The one total of `npm test` and `npm run test:nodes`. */
import { nodeReports, otherNodes, printTotal, report } from './report.js';

printTotal([report, ...otherNodes.flatMap(nodeReports)]);
