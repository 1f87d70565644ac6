import fc from 'fast-check';
import { expect, test } from 'vitest';
import { assign, type Option, type Stake } from '../../../lib/marking/assign';
import { type MatchResult, matchMarks } from '../../../lib/marking/match';
import { FARTHEST } from '../../../lib/marking/place';
import { findingsArb, marksArb, SLACK } from './arbitraries';

type Total = readonly [pairs: number, names: number, distance: number, falls: number, value: number];

function better(a: Total, b: Total): boolean {
  const [pairs, names, distance, falls, value] = a.map((x, i) => (i === 2 ? -1 : 1) * (x - (b[i] ?? 0)));
  const first = [pairs, names, distance, falls, value].find((difference) => difference !== 0);
  return first !== undefined && first > 0;
}

/** Tries every pairing: each finding in turn goes to nobody or to any group still free. */
function bestByTrying(
  stakes: readonly Stake[],
  options: readonly Option[],
  finding = 0,
  taken: readonly number[] = [],
): Total {
  const stake = stakes[finding];
  if (!stake) return [0, 0, 0, 0, 0];
  let best = bestByTrying(stakes, options, finding + 1, taken);
  for (const option of options) {
    if (option.finding !== finding || taken.includes(option.group)) continue;
    const rest = bestByTrying(stakes, options, finding + 1, [...taken, option.group]);
    const total: Total = [
      rest[0] + 1,
      rest[1] + (option.rightName ? 1 : 0),
      rest[2] + option.distance,
      rest[3] + (stake.couldFall ? 1 : 0),
      rest[4] + stake.value,
    ];
    if (better(total, best)) best = total;
  }
  return best;
}

function totalOf(
  chosen: readonly (number | null)[],
  stakes: readonly Stake[],
  options: readonly Option[],
): Total {
  const pairs = chosen.flatMap((group, finding) => {
    if (group === null) return [];
    const option = options.find((o) => o.group === group && o.finding === finding);
    const stake = stakes[finding];
    if (!option || !stake) throw new Error(`finding ${finding} was paired with ${group}, which is no option`);
    return [{ option, stake }];
  });
  const sum = (of: (pair: { option: Option; stake: Stake }) => number) =>
    pairs.reduce((total, pair) => total + of(pair), 0);
  return [
    pairs.length,
    sum(({ option }) => (option.rightName ? 1 : 0)),
    sum(({ option }) => option.distance),
    sum(({ stake }) => (stake.couldFall ? 1 : 0)),
    sum(({ stake }) => stake.value),
  ];
}

// Few distances, so that ties are common.
const distanceArb = fc.oneof(
  fc.constantFrom(0, 1, 2, FARTHEST - 1, FARTHEST),
  fc.integer({ min: 0, max: FARTHEST }),
);
const caseArb = fc
  .record({
    groups: fc.integer({ min: 0, max: 6 }),
    stakes: fc.array(fc.record({ couldFall: fc.boolean(), value: fc.integer({ min: 1, max: 6 }) }), {
      maxLength: 6,
    }),
  })
  .chain(({ groups, stakes }) =>
    fc
      .array(fc.option(fc.record({ rightName: fc.boolean(), distance: distanceArb })), {
        minLength: groups * stakes.length,
        maxLength: groups * stakes.length,
      })
      .map((cells) => ({
        groups,
        stakes,
        options: cells.flatMap((cell, i) =>
          cell ? [{ ...cell, group: Math.floor(i / stakes.length), finding: i % stakes.length }] : [],
        ),
      })),
  );

test('the pairing is as good as the best of all pairings tried one by one, up to 6 by 6', () => {
  fc.assert(
    fc.property(caseArb, ({ groups, stakes, options }) => {
      const chosen = assign(groups, stakes, options);
      const used = chosen.filter((group) => group !== null);
      expect(new Set(used).size).toBe(used.length);
      expect(totalOf(chosen, stakes, options)).toEqual(bestByTrying(stakes, options));
    }),
    { numRuns: 400 },
  );
});

test('the order of marks changes nothing', () => {
  fc.assert(
    fc.property(
      findingsArb,
      marksArb.chain((marks) =>
        fc.tuple(fc.constant(marks), fc.shuffledSubarray([...marks.keys()], { minLength: marks.length })),
      ),
      (findings, [marks, order]) => {
        const straight = matchMarks(findings, marks, SLACK);
        const shuffled = matchMarks(
          findings,
          order.map((index) => marks[index] ?? marks[0]).filter((m) => m !== undefined),
          SLACK,
        );
        // Marks that are equal in every field may change places; what became of their like may not.
        const told = (match: MatchResult, given: (at: number) => number) =>
          match.marks.map((result, at) => JSON.stringify([marks[given(at)], result])).sort();
        expect(told(shuffled, (at) => order[at] ?? -1)).toEqual(told(straight, (at) => at));
        const plain = (match: MatchResult) =>
          match.findings.map(({ outcome, rightName, sure, repeats }) => ({
            outcome,
            rightName,
            sure,
            repeats: repeats.length,
          }));
        expect(plain(shuffled)).toEqual(plain(straight));
      },
    ),
    { numRuns: 400 },
  );
});

test('every mark is told of once, and findings and marks agree', () => {
  fc.assert(
    fc.property(findingsArb, marksArb, (findings, marks) => {
      const match = matchMarks(findings, marks, SLACK);
      expect(match.marks.length).toBe(marks.length);
      match.findings.forEach((result, finding) => {
        const mine = [...match.marks.keys()].filter((m) => match.marks[m]?.finding === finding);
        expect(
          [...result.repeats, ...(result.mark === null ? [] : [result.mark])].sort((a, b) => a - b),
        ).toEqual(mine);
        if (result.mark !== null)
          expect(['found', 'wrong name']).toContain(match.marks[result.mark]?.outcome);
      });
      expect(
        match.marks.filter(({ outcome }) => outcome === 'false').every(({ finding }) => finding === null),
      ).toBe(true);
    }),
    { numRuns: 400 },
  );
});
