import { describe, expect, test } from 'vitest';
import { dabVolume, pressedArea, pressedRadius } from '../../../lib/trade/mortar-disc';
import { dabsOn, type Heap, ridgesOn, ringOn } from '../../../lib/trade/mortar-heaps';
import { spreadOf } from '../../../lib/trade/mortar-spread';

const UK_HEAD = { length: 102.5, height: 65 };

// Solid geometry, worked out by a second program; the head joint is that of a UK brick, 65 × 102.5 × 10 mm.
describe('a half ball of 25 mm pressed to 10 mm', () => {
  const volume = dabVolume(25);
  test.each([
    ['volume, mm³', volume, 32_725, 0.5],
    ['area, mm²', pressedArea(volume, 10), 3272.5, 0.05],
    ['radius, mm', pressedRadius(volume, 10), 32.27, 0.02],
    ['share of a UK head, if none left it, %', (100 * pressedArea(volume, 10)) / (102.5 * 65), 49.1, 0.05],
  ])('%s', (_, value, expected, within) => {
    expect(Math.abs(value - expected)).toBeLessThanOrEqual(within);
  });
});

describe('pressed on a back', () => {
  test('that half ball covers 49 % of a UK head joint and leaves next to nothing over its edge', () => {
    const spread = spreadOf(UK_HEAD, dabsOn(UK_HEAD, 1, 1, 25), 10);
    expect(Math.abs(spread.contact - 49.1)).toBeLessThan(0.6);
    expect(spread.squeezedOut / spread.volume).toBeLessThan(0.01);
  });

  test('66 625 mm³ spread whole fills the joint at 10 mm: 100 %', () => {
    const whole: Heap = { kind: 'bar', x: 0, y: 0, width: 102.5, height: 65, stands: 10.001 };
    const spread = spreadOf(UK_HEAD, [whole], 10);
    expect(spread.contact).toBe(100);
    expect(spread.isShutIn).toBe(false);
  });

  // By hand: 4 ridges of 8 × 12 mm on 60 mm become 4 × 9.6 mm at 10 mm thick, which is 64 %.
  test('4 ridges, 8 wide and 12 high, on a back of 60 mm at 10 mm: 64 %', () => {
    const back = { length: 200, height: 60 };
    expect(Math.abs(spreadOf(back, ridgesOn(back, 4, 8, 12), 10).contact - 64)).toBeLessThanOrEqual(4);
  });

  test('a ring shuts air in, ridges do not', () => {
    const back = { length: 200, height: 100 };
    expect(spreadOf(back, ringOn(back, 15, 14), 10).isShutIn).toBe(true);
    expect(spreadOf(back, ridgesOn(back, 3, 10, 14), 10).isShutIn).toBe(false);
  });

  test('heaps lower than the joint are never touched', () => {
    const back = { length: 200, height: 100 };
    expect(spreadOf(back, ridgesOn(back, 3, 10, 9), 10).contact).toBe(0);
  });

  test('where dabs meet no mortar is lost: twice the mortar that fits covers all', () => {
    const back = { length: 200, height: 100 };
    // 8 half balls of 40 mm are 1 072 330 mm³; the back takes 200 000 mm³ at 10 mm.
    const spread = spreadOf(back, dabsOn(back, 4, 2, 40), 10);
    expect(spread.contact).toBe(100);
    expect(spread.squeezedOut).toBeCloseTo(872_330, -1);
  });
});

// 95 and 80 % of a 12 × 12 in unit leave bare 7.2 and 28.8 in²; of thin brick 7 5/8 × 2 1/4 in, 0.858 and 3.43 in² (shares of ANSI A108.5).
test.each([
  [144, 95, 7.2],
  [144, 80, 28.8],
  [17.15625, 95, 0.858],
  [17.15625, 80, 3.43],
])('%d in² with %d %% in contact leaves %d in²', (area, contact, bare) => {
  const back = { length: area, height: 1 };
  const covered: Heap = {
    kind: 'bar',
    x: 0,
    y: 0,
    width: (area * contact) / 100,
    height: 1,
    stands: 1.000001,
  };
  const spread = spreadOf(back, [covered], 1);
  expect(Math.abs(((100 - spread.contact) / 100) * area - bare)).toBeLessThan(area * 0.0051);
});
