import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { layOutDovetails } from '../../kernel-helpers/src/joints/dovetails.js';
import { sizeBookcase } from '../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { drawnBookcase } from '../../kernel-helpers/src/piece/bookcase/drawn-bookcase.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { sizeDrawer } from '../../kernel-helpers/src/piece/drawer/drawer.js';
import { drawnDrawer } from '../../kernel-helpers/src/piece/drawer/drawn-drawer.js';
import { typeface } from '../../kernel-helpers/src/record/own/typeface-file.js';
import { jointTemplate } from '../../kernel-helpers/src/show/drawing/joint-template.js';
import { letteringTemplate } from '../../kernel-helpers/src/show/drawing/lid/lettering-template.js';
import { storyStick } from '../../kernel-helpers/src/show/drawing/story-stick.js';
import { layOutHandle } from '../../kernel-helpers/src/surface/handle/handle.js';
import { layOutLettering } from '../../kernel-helpers/src/surface/lettering/lettering.js';
import { yearOfAir } from '../../kernel-helpers/src/wood/air/air.js';
import { keepPicture, startBrowser } from './chromium.js';

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await startBrowser();
  page = await browser.newPage({ viewport: { width: 1000, height: 1200 } });
  await page.emulateMedia({ media: 'print' });
});

afterAll(() => browser?.close());

/** A rectangle on paper, mm: the browser prints 96 of its pixels to the inch. */
interface OnPaper {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Where the geometry of elements lies, strokes left out, as the browser places it. */
function onPaper(selector: string): Promise<OnPaper[]> {
  const code = `[...document.querySelectorAll(${JSON.stringify(selector)})].map((element) => {
    const { x, y, width, height } = element.getBBox();
    const matrix = element.getScreenCTM();
    const [a, b] = [new DOMPoint(x, y), new DOMPoint(x + width, y + height)].map((point) => point.matrixTransform(matrix));
    const mm = (pixels) => (pixels / 96) * 25.4;
    return { left: mm(a.x), right: mm(b.x), top: mm(a.y), bottom: mm(b.y) };
  })`;
  return page.evaluate(code) as Promise<OnPaper[]>;
}

/** Where pieces are drawn on a page, from its picture's upper edge, mm. */
const window = { from: 8, to: 208 };

/** Labels that stand over one another or reach past the edge of their page, as far as they are seen. */
function clashes(): Promise<string[]> {
  const code = `[...document.querySelectorAll('section > svg')].flatMap((picture) => {
    const paper = picture.getBoundingClientRect();
    const px = (mm) => paper.top + (mm / 25.4) * 96;
    const texts = [...picture.querySelectorAll('text')].map((element) => {
      const { left, right, top, bottom } = element.getBoundingClientRect();
      const piece = element.closest('.piece');
      const [from, to] = piece ? [px(${window.from}), px(${window.to})] : [paper.top, paper.bottom];
      const cut = piece && element.getBBox().x + element.getBBox().width > piece.viewBox.baseVal.width;
      return { cut, text: element.textContent, left, right, top: Math.max(top, from), bottom: Math.min(bottom, to) };
    }).filter(({ top, bottom }) => bottom > top);
    // Letters do not fill their line: two pixels of it are air.
    const over = texts.flatMap((a, i) => texts.slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom - 2 && b.top < a.bottom - 2)
      .map((b) => a.text + ' / ' + b.text));
    const off = texts.filter(({ cut, left, right }) => cut || left < paper.left || right > paper.right).map(({ text }) => text);
    return [...over, ...off];
  })`;
  return page.evaluate(code) as Promise<string[]>;
}

/** Words over a page that are cut off below. */
function cutLines(): Promise<string[]> {
  const code = `[...document.querySelectorAll('section > header')].filter((each) => each.scrollHeight > each.clientHeight + 1).map((each) => each.textContent)`;
  return page.evaluate(code) as Promise<string[]>;
}

/** How many sheets of paper a printer would use. */
async function sheets(format: 'A4' | 'Letter'): Promise<number> {
  const pdf = await page.pdf({ format, preferCSSPageSize: false });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

const joint = layOutDovetails({
  boardWidth: '5 in',
  stockThickness: '5/8 in',
  proud: '1/8 in',
  tails: 3,
  pinWidth: '1/4 in',
  halfPin: '3/8 in',
  topHalfPin: '5/8 in',
  slope: '1:8',
});
const tall = layOutDovetails({
  boardWidth: 22,
  stockThickness: 0.75,
  tails: 9,
  pinWidth: 0.5,
  halfPin: 0.75,
  slope: 7,
});
const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
  proud: '1/8 in',
});

const toPaper = 25.4;
const closeTo = (measured: number | undefined, inches: number) =>
  expect(Math.abs((measured ?? Number.NaN) - inches * toPaper)).toBeLessThan(0.1);

test('the check lengths are 100 mm and 4 in on paper, on every page, and no words above are cut off', async () => {
  const words = { lengths: 'both', firstBoards: 'front and back' } as const;
  for (const document of [jointTemplate(joint, words), jointTemplate(tall, words), storyStick(box)]) {
    await page.setContent(document);
    expect(await cutLines()).toEqual([]);
    const pages = await page.locator('section').count();
    const lengths = (await onPaper('.check')).map(({ left, right }) => right - left);
    expect(lengths).toHaveLength(2 * pages);
    lengths.forEach((length, i) => {
      closeTo(length, i % 2 === 0 ? 100 / 25.4 : 4);
    });
    await expect(page.locator('section h1, section h2').allTextContents()).resolves.toSatisfy((texts: string[]) =>
      texts.every((text) => text.includes('Print at 100 %, measure the check length first')),
    );
  }
});

test.each([
  ['on one page', joint],
  ['on several', tall],
])('the joint template is the layout at full size, %s', async (_, layout) => {
  await page.setContent(jointTemplate(layout));
  const [first, pinBoard] = await onPaper('section:first-of-type .board');
  const pins = await onPaper('section:first-of-type .pin');
  const sockets = await onPaper('section:first-of-type .socket');
  expect(pins).toHaveLength(layout.pins.length);
  closeTo((first?.bottom ?? 0) - (first?.top ?? 0), layout.boardWidth);
  closeTo((first?.right ?? 0) - (first?.left ?? 0), 2 * layout.gaugeSetting + layout.stockThickness);
  // A pin is widest at the baseline.
  layout.pins.forEach(({ baselineFrom, baselineTo }, i) => {
    closeTo((pins[i]?.top ?? 0) - (first?.top ?? 0), baselineFrom);
    closeTo((pins[i]?.bottom ?? 0) - (first?.top ?? 0), baselineTo);
  });
  closeTo((pinBoard?.right ?? 0) - (pinBoard?.left ?? 0), layout.stockThickness);
  // A socket is widest at the outside face, which lies `proud` in from the tails' ends.
  const slant = layout.proud / layout.slope;
  layout.tails.forEach(({ from, to }, i) => {
    closeTo((sockets[i]?.top ?? 0) - (pinBoard?.top ?? 0), from + slant);
    closeTo((sockets[i]?.bottom ?? 0) - (pinBoard?.top ?? 0), to - slant);
  });
  await keepPicture(page, `joint-template-${layout.tails.length}`);
});

test('pages that follow one another carry the same mark at the same place of the board', async () => {
  await page.setContent(jointTemplate(tall));
  const count = await page.locator('section').count();
  expect(count).toBeGreaterThan(2);
  const place = async (number: number, which: 'first' | 'last') => {
    const section = `section:nth-of-type(${number})`;
    const [board] = await onPaper(`${section} .board`);
    const marks = await onPaper(`${section} .match`);
    const mark = which === 'first' ? marks[0] : marks.at(-1);
    return (mark?.top ?? 0) - (board?.top ?? 0);
  };
  for (let number = 1; number < count; number++)
    expect(Math.abs((await place(number, 'last')) - (await place(number + 1, 'first')))).toBeLessThan(0.1);
});

test('the last page reaches the end of the board', async () => {
  await page.setContent(jointTemplate(tall));
  const [board] = await onPaper('section:last-of-type .board');
  const picture = await page.locator('section:last-of-type > svg').boundingBox();
  expect((board?.bottom ?? 0) - ((picture?.y ?? 0) / 96) * 25.4).toBeLessThan(window.to);
});

test('a story stick has every mark at its distance from the end', async () => {
  await page.setContent(storyStick(box));
  const sticks = await onPaper('.stick');
  closeTo((sticks[0]?.bottom ?? 0) - (sticks[0]?.top ?? 0), 11);
  const marks = await onPaper('section:first-of-type .piece:first-of-type .mark');
  // 9 1/2 inside, 5/8 boards, 1/8 proud; the lid from the front's face to 1/4 - 1/32 past the back's inside face.
  [0, 0.125, 0.125, 0.75, 10.25, 10.46875, 10.875, 11].forEach((inches, i) => {
    closeTo((marks[i]?.top ?? 0) - (sticks[0]?.top ?? 0), inches);
  });
  await keepPicture(page, 'story-stick');
});

test('each page fits on A4 and on Letter', async () => {
  for (const document of [jointTemplate(joint), jointTemplate(tall), storyStick(box)]) {
    await page.setContent(document);
    const pages = await page.locator('section').count();
    expect(await sheets('A4')).toBe(pages);
    expect(await sheets('Letter')).toBe(pages);
  }
});

test('no label lies over another, in tape, in millimetres or both, on long boxes and tiny ones', async () => {
  const tiny = sizeBox({ insideLength: 1, insideWidth: 1, insideDepth: 0.5, species: 'walnut-black' });
  const long = sizeBox({ insideLength: 36, insideWidth: 24, insideDepth: 18, species: 'walnut-black' });
  for (const each of [box, tiny, long]) {
    for (const lengths of ['tape', 'mm', 'both'] as const) {
      await page.setContent(storyStick(each, { lengths }));
      expect(await clashes()).toEqual([]);
    }
  }
  for (const layout of [joint, tall]) {
    await page.setContent(jointTemplate(layout, { lengths: 'both' }));
    expect(await clashes()).toEqual([]);
  }
});

test('the stick of any piece is as long as the piece, and no label lies over another', async () => {
  const sizes = { species: 'cherry-black', width: '31 1/4 in', height: '47 3/8 in', depth: '11 in', shelves: 4 };
  const bookcase = sizeBookcase({ ...sizes, backThickness: '13/64 in' });
  await page.setContent(storyStick(drawnBookcase(bookcase), { lengths: 'both' }));
  expect(await clashes()).toEqual([]);
  const [across] = await onPaper('section:first-of-type .stick');
  closeTo((across?.bottom ?? 0) - (across?.top ?? 0), 31.25);
  const moving = {
    species: 'cherry-black',
    ringAngle: 0,
    fittingMoisture: 8,
    air: yearOfAir({ place: 'chicago-ohare' }),
  };
  const drawer = sizeDrawer({ ...moving, opening: '3 in', openingWidth: '9 in', openingDepth: '12 in' });
  await page.setContent(storyStick(drawnDrawer(drawer), { lengths: 'both' }));
  expect(await clashes()).toEqual([]);
});

const lid = (insideWidth: string, insideLength: string) => {
  const chest = sizeBox({ insideLength, insideWidth, insideDepth: '4 in', species: 'walnut-black' });
  const lettering = layOutLettering({ box: chest, face: typeface('roman'), text: 'TEA 2027', height: '3/4 in' });
  return { lettering, handle: layOutHandle({ box: chest, kind: 'scoop', lettering }) };
};

test('letters and scoop stand at full size where they lie on the lid, from its middle line and its front end', async () => {
  const { lettering, handle } = lid('6 1/4 in', '9 1/2 in');
  await page.setContent(letteringTemplate({ lettering, handle }));
  const [middle] = await onPaper('.middle');
  const [shoulder] = await onPaper('.shoulder');
  const letters = await onPaper('.letter');
  const at = middle?.left ?? 0;
  const front = shoulder?.bottom ?? 0;
  const inch = 25.4;
  // A browser places to a hundredth of a pixel or so, 0.003 mm.
  expect(((shoulder?.right ?? 0) - (shoulder?.left ?? 0)) / inch).toBeCloseTo(lettering.field.width, 3);
  expect((at - Math.min(...letters.map(({ left }) => left))) / inch).toBeCloseTo(
    lettering.field.width / 2 - lettering.extent.left,
    3,
  );
  expect((front - Math.max(...letters.map(({ bottom }) => bottom))) / inch).toBeCloseTo(lettering.extent.front, 3);
  expect((front - Math.min(...letters.map(({ top }) => top))) / inch).toBeCloseTo(lettering.extent.back, 3);
  const [scoop] = await onPaper('.handle');
  expect((front - (scoop?.bottom ?? 0)) / inch).toBeCloseTo(handle.extent.front, 3);
  expect(((scoop?.right ?? 0) - (scoop?.left ?? 0)) / inch).toBeCloseTo(handle.extent.right - handle.extent.left, 3);
  expect(await clashes()).toEqual([]);
  expect(await cutLines()).toEqual([]);
  expect(await sheets('Letter')).toBe(1);
  await keepPicture(page, 'lettering-template');
});

test('a lid wider than a page comes in strips that meet', async () => {
  const { lettering, handle } = lid('20 in', '10 in');
  await page.setContent(letteringTemplate({ lettering, handle }));
  const joins = await onPaper('.join');
  expect(joins).toHaveLength(4); // three strips, two edges in common
  expect(await clashes()).toEqual([]);
});
