import { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';

// What the tests import as `vitest` while mutants are tried: the same matchers, and tests that wait until they are asked.
chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
export const expect = chai.expect;

type Body = (...row: unknown[]) => unknown;
export const collected: { name: string; body: () => unknown }[] = [];

type Declare = (name: string, body: Body) => void;
const withEach = (declare: Declare) =>
  Object.assign(declare, {
    each: (rows: readonly unknown[]) => (name: string, body: Body) => {
      for (const row of rows) declare(name, () => (Array.isArray(row) ? body(...row) : body(row)));
    },
  });
export const it = withEach((name, body) => void collected.push({ name, body: () => body() }));
export const describe = withEach((_, body) => void body());
export const test = it;
