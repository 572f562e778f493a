/**
 * Three boxes worked by hand on paper, in inches; the work stands beside each figure.
 * Rules: common practice, no source (trade rules of sizing).
 */
export const handWorked = [
  {
    name: 'tea chest, 1/8 proud, plywood bottom',
    brief: {
      insideLength: '9 1/2 in',
      insideWidth: '6 1/4 in',
      insideDepth: '4 in',
      species: 'walnut-black',
      proud: '1/8 in',
      bottomThickness: '13/64 in',
      bottomClearance: '3/64 in',
    },
    overall: {
      length: 11, // 9 1/2 + 2 (5/8 + 1/8)
      width: 7 + 3 / 4, // 6 1/4 + 1 1/2
      height: 4 + 61 / 64, // 1/4 + 13/64 + 4 + 1/2
    },
    front: 4 + 29 / 64, // side less 1/2
    lid: { length: 10 + 11 / 32, width: 6 + 11 / 16 }, // 9 1/2 + 5/8 + 1/4 - 1/32; 6 1/4 + 2 (1/4 - 1/32)
    bottom: { length: 9 + 61 / 64, width: 6 + 45 / 64 }, // inside + 1/2 - 3/64
    gauge: 3 / 4, // 5/8 + 1/8
  },
  {
    name: 'pencil box, flush, thin stock',
    brief: {
      insideLength: '8 in',
      insideWidth: '2 1/2 in',
      insideDepth: '1 1/2 in',
      species: 'cherry-black',
      stockThickness: '3/8 in',
      proud: 0,
      foot: '3/16 in',
      lidThickness: '1/4 in',
      tongueThickness: '1/8 in',
      lidGrooveDepth: '3/16 in',
      lidClearance: '1/32 in',
      bottomThickness: '1/8 in',
      bottomGrooveDepth: '3/16 in',
      bottomClearance: '1/32 in',
    },
    overall: {
      length: 8 + 3 / 4, // 8 + 2 (3/8)
      width: 3 + 1 / 4, // 2 1/2 + 3/4
      height: 2 + 1 / 16, // 3/16 + 1/8 + 1 1/2 + 1/4
    },
    front: 1 + 13 / 16, // side less 1/4
    lid: { length: 8 + 17 / 32, width: 2 + 13 / 16 }, // 8 + 3/8 + 3/16 - 1/32; 2 1/2 + 2 (5/32)
    bottom: { length: 8 + 11 / 32, width: 2 + 27 / 32 }, // inside + 3/8 - 1/32
    gauge: 3 / 8,
  },
  {
    name: 'metric card box, 200 x 120 x 80 mm inside, 12 mm stock, 2 mm proud',
    brief: {
      insideLength: '200 mm',
      insideWidth: '120 mm',
      insideDepth: '80 mm',
      species: 'maple-sugar',
      stockThickness: '12 mm',
      proud: '2 mm',
      foot: '6 mm',
      lidThickness: '10 mm',
      tongueThickness: '5 mm',
      lidGrooveDepth: '5 mm',
      lidClearance: '0.5 mm',
      bottomThickness: '5 mm',
      bottomGrooveDepth: '5 mm',
      bottomClearance: '1 mm',
    },
    overall: { length: 228 / 25.4, width: 148 / 25.4, height: 101 / 25.4 }, // + 2 (12 + 2); 6 + 5 + 80 + 10
    front: 91 / 25.4, // 101 - 10
    lid: { length: 216.5 / 25.4, width: 129 / 25.4 }, // 200 + 12 + 5 - 0.5; 120 + 2 (4.5)
    bottom: { length: 209 / 25.4, width: 129 / 25.4 }, // inside + 10 - 1
    gauge: 14 / 25.4,
  },
];
