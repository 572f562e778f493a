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
    'winter-air': { right: '12', wrong: '71 %', step: /vapour is kept/ },
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
  '07-what-milling-takes': {
    feet: { right: '0.96 bd ft', wrong: '138', step: /cubic inches/ },
    thickness: { right: '37.5 %', wrong: '62.5', step: /what stays/ },
    final: { right: '49.8', wrong: '24.9 %', step: /two sides/ },
  },
  '08-reading-a-board': {
    feet: { right: '6 1/4', wrong: '5', step: /thicker than an inch/ },
    rift: { right: '0.00187', wrong: '0.00374', step: /half of each/ },
    final: { right: '6', wrong: '7 sides', step: /through the knot/ },
  },
  '09-what-an-hour-costs': {
    year: { right: '1104', wrong: '1,840 h', step: /all hours/ },
    share: { right: '11.96', wrong: '7.17', step: /all hours/ },
    final: { right: '$47.94', wrong: '43.96', step: /usual year/ },
  },
  '10-margin-and-markup': {
    price: { right: '640', wrong: '600', step: /a markup/ },
    markup: { right: '33 1/3 %', wrong: '25', step: /that is the margin/ },
    friendly: { right: '16.7', wrong: '15', step: /new price/ },
    final: { right: '650', wrong: '591.50', step: /a markup/ },
  },
  '11-reading-a-record': {
    entries: { right: '3', wrong: '4', step: /adds nothing/ },
    'which-line': { right: '2', wrong: '1', step: /knows nothing/ },
    final: { right: '4 in', wrong: '4 1/4', step: /newest brief/ },
  },
};
