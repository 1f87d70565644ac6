import { describe, expect, test } from 'vitest';
import { type LoadPath, loadsOn } from '../../../lib/failing/margins/loads';
import { without } from '../../../lib/failing/margins/next';
import { laidContacts } from '../../../lib/failing/state/contacts';
import type { FailingWall } from '../../../lib/failing/state/model';
import { failingView } from '../../../lib/views/failing/failing-view';
import { withLoads } from '../../../lib/views/failing/load-arrows';
import { surveyOf } from '../../../lib/wall/survey';
import { ledge, wallOf } from '../../naive/build';

function laid(rows: number[][]): FailingWall {
  const survey = surveyOf(wallOf(rows, { masonry: 'anchored', supports: [ledge(0, 590)] }));
  const state = {
    ...{ years: 0, season: 'summer' as const, stuff: 'clay' as const, held: [], damage: [], zones: [] },
    contacts: laidContacts(survey),
    ...{ moves: new Map(), splits: new Map(), supports: new Map(), missing: new Map() },
  };
  return { survey, state };
}

/** Three columns of three units of one size: what lies on each counts up in weights of one unit. */
const STACK = laid([
  [190, 190, 190],
  [190, 190, 190],
  [190, 190, 190],
]);
/** Every unit of the second course but its ends lies with 90 mm on one below and with 90 mm on the next. */
const BONDED = laid([
  [190, 190, 190],
  [90, 190, 190, 90],
]);

function pathsOf(failing: FailingWall): readonly LoadPath[] {
  const paths: LoadPath[] = [];
  loadsOn(failing, (path) => paths.push(path));
  return paths;
}

/** What goes from one to the other, in weights of a unit of 190 mm. */
function weights(failing: FailingWall, from: string, to: string): number | undefined {
  const paths = pathsOf(failing);
  const one = pathsOf(STACK).find((path) => path.from === 'A3.1')?.force ?? 0;
  const force = paths.find((path) => path.from === from && path.to === to)?.force;
  return force === undefined ? undefined : Math.round((force / one) * 1e6) / 1e6;
}

describe('load paths', () => {
  test('down a column one weight is added a unit, and the ledge gets three', () => {
    expect(weights(STACK, 'A3.2', 'A2.2')).toBe(1);
    expect(weights(STACK, 'A2.2', 'A1.2')).toBe(2);
    expect(weights(STACK, 'A1.2', 'A-ledge')).toBe(3);
  });

  test('what lies evenly on two goes in halves to both, in the middle of where they touch', () => {
    expect(weights(BONDED, 'A2.2', 'A1.1')).toBe(0.5);
    expect(weights(BONDED, 'A2.2', 'A1.2')).toBe(0.5);
    const path = pathsOf(BONDED).find(({ from, to }) => from === 'A2.2' && to === 'A1.1');
    // From 100 to 190 mm.
    expect(path?.x).toBe(145);
  });

  test('with a unit gone, what lay on it hangs and goes nowhere, and what was below carries itself alone', () => {
    const gone = without(STACK, 'A2.2');
    expect(pathsOf(gone).some(({ from }) => from === 'A3.2')).toBe(false);
    expect(weights(gone, 'A1.2', 'A-ledge')).toBe(1);
    expect(weights(gone, 'A1.1', 'A-ledge')).toBe(3);
  });

  test('arrows are as wide as their forces, the greatest 34 mm', () => {
    const bare = failingView(STACK, 'mm');
    const { shapes } = withLoads(bare, STACK, 'A2.2');
    const widths = shapes.slice(bare.shapes.length).map((shape) => {
      const [[left] = [0], [right] = [0]] = (shape.kind === 'area' ? shape.rings[0] : undefined) ?? [];
      return Math.round((right - left) * 100) / 100;
    });
    // One, two and three weights.
    expect(widths).toEqual([11.33, 22.67, 34]);
  });
});
