/** For each question of each lesson: a right answer, and a wrong one with a word of the step that it names. */
export const lessonAnswers: Record<string, Record<string, { right: string; wrong: string; step: RegExp }>> = {
  '01-reading-a-tape': {
    arrow: { right: '1 13/16', wrong: '13/16 in', step: /the inch that B has passed/ },
    board: { right: '7 7/8 in', wrong: '7 1/16', step: /two ends/ },
    final: { right: '4 29/64', wrong: '3 29/64 in', step: /carry it over/ },
  },
  '02-why-wood-moves': {
    flat: { right: '0.092', wrong: '0.023 in', step: /four/ },
    quarter: { right: '3/64', wrong: '0.092', step: /radial coefficient/ },
    final: { right: '17/64', wrong: '0.053', step: /dries by five/ },
  },
  '03-air-and-moisture': {
    half: { right: '9.3 %', wrong: '50', step: /said of the air/ },
    'winter-air': { right: '12', wrong: '70', step: /vapour is kept/ },
    final: { right: '4.8', wrong: '30 %', step: /difference in the air/ },
  },
  '04-lid-july-january': {
    'opening-figure': { right: '6 3/4', wrong: '6 1/2', step: /either side/ },
    swelling: { right: '0.055', wrong: '0.0185', step: /one per cent/ },
    final: { right: '6.685 in', wrong: '6.740', step: /still has to swell/ },
  },
  '05-stepping-off-dovetails': {
    'setting-figure': { right: '1 1/2', wrong: '1.417', step: /give one pin back/ },
    root: { right: '1 3/32', wrong: '1 1/4', step: /narrows/ },
    final: { right: '1 9/16 in', wrong: '1 1/2', step: /give one pin back/ },
  },
  '06-where-grooves-come-out': {
    stop: { right: '1/2', wrong: '3/4', step: /no room/ },
    fence: { right: '5/64', wrong: '1/8', step: /left over/ },
    final: { right: '3/16', wrong: '5/16', step: /goes on by its radius/ },
  },
};
