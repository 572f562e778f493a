import { command, templateCommission } from './sheets/setting.js';

const { folder } = templateCommission();
const done = command('work', folder);
console.log(done.stdout, done.stderr);
console.log(folder);
