import { layOutDovetails } from '../../kernel-helpers/src/joints/dovetails.js';
import { layOutFingers } from '../../kernel-helpers/src/joints/finger-joint.js';
import { layOutKeyedMitre } from '../../kernel-helpers/src/joints/keyed-mitre.js';
import { layOutRabbet } from '../../kernel-helpers/src/joints/rabbet.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';

/** A box, invented, and its corner in each of the four joints. */
export const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
});
const boards = { boardWidth: box.overall.height, stockThickness: '5/8 in' };
export const dovetails = layOutDovetails({ ...boards, tails: 3, pinWidth: '5/16 in', halfPin: '1/2 in', slope: '1:8' });
export const fingers = layOutFingers({ ...boards, fingers: 9, cutter: '1/4 in' });
export const keyedMitre = layOutKeyedMitre({ ...boards, keys: 3, keyThickness: '1/8 in', keyDepth: '1/2 in' });
export const rabbet = layOutRabbet(boards);
