import { templateCommission, changeParameter, command } from './sheets/setting.js';
import { symlinkSync } from 'node:fs';
const { folder } = templateCommission();
const c = (f: string, a: string, b: string) => changeParameter(folder, f, a, b);
c('01-brief.ipynb', "'9 1/2 in'", "'240 mm'"); c('01-brief.ipynb', "'6 1/4 in'", "'90 mm'"); c('01-brief.ipynb', "'4 in'", "'60 mm'");
c('01-brief.ipynb', 'walnut-black', 'cherry-black'); c('01-brief.ipynb', "'both'", "'mm'"); c('01-brief.ipynb', 'chicago-ohare', process.argv[2] ?? 'london');
c('04-lid-through-the-year.ipynb', 'fittingMoisture: 8', 'fittingMoisture: 9.5');
const done = command('work', folder); console.log(done.stdout, done.stderr); console.log(folder);
