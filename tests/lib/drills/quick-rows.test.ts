import { expect, test } from 'vitest';
import { WALLS_A_ROUND } from '../../../lib/drills/quick/quick-round';
import { quickRows } from '../../../lib/drills/quick/quick-rows';

const ROUNDS = 20;

test('what could fall and was missed comes first, then what else was answered wrongly, then the rest', () => {
  const allSound = Array.from({ length: WALLS_A_ROUND }, () => false);
  // The first round with a wall that could fall behind one that could not.
  for (let round = 0; round < ROUNDS; round++) {
    const rows = quickRows({ look: 'face', level: 1, rules: 'canada', round }, allSound);
    const kinds = rows.map(({ faulty, findings }) => {
      if (!faulty) return 'sound';
      return findings.some(({ finding }) => finding.hazard === 'could fall') ? 'could fall' : 'faulty';
    });
    const order = ['could fall', 'faulty', 'sound'];
    expect(kinds).toEqual([...kinds].sort((a, b) => order.indexOf(a) - order.indexOf(b)));
    const [first] = rows;
    if (
      kinds[0] === 'could fall' &&
      rows.some(({ number, faulty }) => faulty && number < (first?.number ?? 0))
    )
      return;
  }
  throw new RangeError(`none of ${ROUNDS} rounds has such a wall`);
});
