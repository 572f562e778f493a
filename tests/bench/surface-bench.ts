/** `npm run bench`: a line of thirty letters with its depths and its preview, from text to picture, cold and warm. */
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { typeface } from '../../kernel-helpers/src/record/own/typeface-file.js';
import { letteringPreview } from '../../kernel-helpers/src/show/drawing/lid/lettering-preview.js';
import { layOutLettering } from '../../kernel-helpers/src/surface/lettering/lettering.js';

const rounds = 15;
const text = 'For the Garden House, Anno 2027 & on';
const letters = text.replaceAll(' ', '').length;
const box = sizeBox({ insideLength: '10 in', insideWidth: '14 in', insideDepth: '4 in', species: 'walnut-black' });

const began = performance.now();
const face = typeface('book');
const times: number[] = [];
let size = 0;
for (let round = 0; round < rounds; round++) {
  const start = performance.now();
  // A little larger each time, so that nothing can be kept from the round before.
  const lettering = layOutLettering({ box, face, text, height: 0.4 + round / 1000 });
  size = letteringPreview(lettering).text.length;
  times.push(performance.now() - start);
}
const cold = (times[0] as number) + (performance.now() - began - times.reduce((sum, each) => sum + each, 0));
const warm = times.slice(5).sort((a, b) => a - b);
const line = (what: string, figure: string) => console.log(`${what.padEnd(58)} ${figure}`);
line(`${letters} letters, depths and preview, first time`, `${cold.toFixed(0)} ms`);
line(
  `${letters} letters, depths and preview, warm, median`,
  `${(warm[5] as number).toFixed(0)} ms  (${warm[0]?.toFixed(0)} to ${warm.at(-1)?.toFixed(0)})`,
);
line('Size of the picture in the sheet', `${(size / 1024).toFixed(0)} kB`);
