/**
 * Crank 1975, The Mathematics of Diffusion, 2nd ed., chapter 4 (plane sheet), and Carslaw and Jaeger 1959, Conduction of
 * Heat in Solids (periodic surface): a slab open on both faces, half thickness a, Fo = D t / a².
 */

/** Part of the whole change reached, mean over the slab, when both faces jump and stay. */
export function firstKind(Fo: number): number {
  let left = 0;
  for (let n = 0; n < 500; n++) {
    const odd = (2 * n + 1) * Math.PI;
    left += (8 / odd ** 2) * Math.exp((-(odd ** 2) * Fo) / 4);
  }
  return 1 - left;
}

/** The same in the middle of the slab. */
export function firstKindCentre(Fo: number): number {
  let left = 0;
  for (let n = 0; n < 500; n++) {
    const odd = (2 * n + 1) * Math.PI;
    left += (-1) ** n * (4 / odd) * Math.exp((-(odd ** 2) * Fo) / 4);
  }
  return 1 - left;
}

/** Part of the whole change reached, mean over the slab, with a resistance at the faces: Bi = h a / D. */
export function thirdKind(Bi: number, Fo: number): number {
  let left = 0;
  for (let n = 0; n < 500; n++) {
    const b = rootOf(Bi, n);
    left += ((2 * Bi ** 2) / (b ** 2 * (b ** 2 + Bi ** 2 + Bi))) * Math.exp(-(b ** 2) * Fo);
  }
  return 1 - left;
}

/** Root of b tan b = Bi in the n-th branch, by halving. */
function rootOf(Bi: number, n: number): number {
  let [low, high] = [n * Math.PI, (n + 0.5) * Math.PI];
  for (let i = 0; i < 200; i++) {
    const b = (low + high) / 2;
    if (b * Math.sin(b) - Bi * Math.cos(b) > 0 === (n % 2 === 0)) high = b;
    else low = b;
  }
  return (low + high) / 2;
}

/**
 * Mean content of a slab whose surroundings swing with a period, for one unit of swing: [in step with it, a quarter period
 * late]. tanh(z)/z / (1 + z tanh(z)/Bi), z = (1 + i) a sqrt(w / (2 D)).
 */
export function periodic(a: number, D: number, period: number, Bi = Number.POSITIVE_INFINITY): [number, number] {
  const y = a * Math.sqrt(Math.PI / (period * D));
  // tanh(y + iy) = (sinh 2y + i sin 2y) / (cosh 2y + cos 2y)
  const below = Math.cosh(2 * y) + Math.cos(2 * y);
  const tanh: [number, number] = [Math.sinh(2 * y) / below, Math.sin(2 * y) / below];
  const z: [number, number] = [y, y];
  const film = times(z, tanh);
  const [re, im] = over(over(tanh, z), [1 + film[0] / Bi, film[1] / Bi]);
  return [re, -im];
}

type Complex = [number, number];
const times = ([a, b]: Complex, [c, d]: Complex): Complex => [a * c - b * d, a * d + b * c];
const over = ([a, b]: Complex, [c, d]: Complex): Complex => {
  const size = c * c + d * d;
  return [(a * c + b * d) / size, (b * c - a * d) / size];
};
