/** Flat-sawn cherry fitted at 8 %, one month each way, so that sums can be done by hand: it moves 0.00248 for 1 %. */
export const cherry = {
  species: 'cherry-black',
  ringAngle: 0,
  fittingMoisture: 8,
  air: [],
  moistures: [
    { month: 1, moisture: 6 },
    { month: 7, moisture: 12 },
  ],
};
