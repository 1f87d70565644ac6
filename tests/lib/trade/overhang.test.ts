import { describe, expect, test } from 'vitest';
import {
  bearingOf,
  overhangMarksOf,
  peakStressRatio,
  pressedLengthOf,
  standingOf,
} from '../../../lib/trade/overhang';

test('a 90 mm unit 30 mm past the edge', () => {
  expect(bearingOf(90, 30)).toBe(60);
  // 3 × (30 − 15): the inner 15 mm of the bearing has lifted.
  expect(pressedLengthOf(90, 30)).toBe(45);
  expect(peakStressRatio(90, 30)).toBe(4);
});

describe('how a unit 100 mm deep stands', () => {
  test.each([
    [0, 'pressed', 100],
    [24.875, 'pressed', 75.125],
    [25, 'pressed', 75],
    [25.125, 'lifting', 74.625],
    [49.875, 'lifting', 0.375],
  ])('overhang %d: %s over %d mm', (overhang, standing, pressed) => {
    expect(standingOf(100, overhang)).toBe(standing);
    expect(pressedLengthOf(100, overhang)).toBe(pressed);
  });

  test.each([50, 50.125, 99])('overhang %d: tipping', (overhang) => {
    expect(standingOf(100, overhang)).toBe('tipping');
  });
});

test('the two formulas meet at the kern, and only go up', () => {
  expect(peakStressRatio(100, 25)).toBeCloseTo(8 / 3, 12);
  expect(peakStressRatio(100, 25.000_001)).toBeCloseTo(8 / 3, 6);
  const steps = Array.from({ length: 50 }, (_, overhang) => peakStressRatio(100, overhang));
  expect(steps).toEqual([...steps].sort((a, b) => a - b));
});

// Force and moment: a pressure that falls straight from p at the edge over the pressed length carries the whole weight at b/2.
test.each([26, 30, 40, 49])('balance of a lifting unit at %d mm', (overhang) => {
  const pressed = pressedLengthOf(100, overhang);
  const force = (peakStressRatio(100, overhang) * pressed) / 2;
  expect(force).toBeCloseTo(100, 9);
  expect(pressed / 3 + overhang).toBeCloseTo(50, 9);
});

test('marks of a 90 mm unit', () => {
  expect(overhangMarksOf(90)).toEqual({ kern: 22.5, third: 30, tipping: 45 });
});

test.each([
  ['no depth', () => overhangMarksOf(0), 'depth: 0 is not above zero'],
  ['a depth that is no number', () => bearingOf(NaN, 1), 'depth: NaN is not a finite number'],
  ['a unit set back', () => bearingOf(90, -1), 'overhang: -1 is negative'],
  ['a unit off its ledge', () => bearingOf(90, 90), 'overhang: 90 mm leaves nothing of 90 mm on the ledge'],
  ['an endless overhang', () => bearingOf(90, Infinity), 'overhang: Infinity is not a finite number'],
  ['the stand of a unit off its ledge', () => standingOf(90, 120), 'overhang: 120 mm leaves nothing'],
  [
    'the bearing of a unit that tips',
    () => pressedLengthOf(90, 45),
    'overhang: at 45 mm a unit 90 mm deep tips',
  ],
  [
    'the stress of a unit that tips',
    () => peakStressRatio(90, 60),
    'overhang: at 60 mm a unit 90 mm deep tips',
  ],
])('refuses %s', (_, act, message) => {
  expect(act).toThrow(RangeError);
  expect(act).toThrow(message);
});
