import { describe, expect, test } from 'vitest';
import { LOOK_ALIKES } from '../../../lib/generate/look-alikes/look-alike';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { findFaults } from '../../../lib/inspect/find-fault';
import { CHECKS, type CheckId } from '../../../lib/inspect/finding';
import { LOOK_ALIKE_TEXTS } from '../../../lib/inspect/look-alikes';
import { COULD_FALL_CAUTIONS, DRAWING_CAUTIONS, LIMIT_CAUTIONS } from '../../../lib/inspect/make-safe';

const sentencesOf = (text: string) => text.split(/(?<=[.!?;:])\s+/);
const lengthOf = (sentence: string) => sentence.split(/\s+/).length;

const rows = CHECKS.map((check) => ({ check, row: CATALOGUE[check] }));
const lookAlikes = Object.entries(LOOK_ALIKE_TEXTS);

/** A text after where it stands, so that a failing one is named. */
type Placed = readonly [where: string, text: string];

const prose: readonly Placed[] = [
  ...rows.flatMap(({ check, row }): Placed[] => [
    [`${check} looksLike`, row.looksLike],
    [`${check} whereToLook`, row.whereToLook],
    [`${check} measuredBy`, row.measuredBy],
    [`${check} whyItMatters`, row.whyItMatters],
    [`${check} putsRight`, row.putsRight],
  ]),
  ...lookAlikes.flatMap(([id, text]): Placed[] => [
    [`${id} looksWrong`, text.looksWrong],
    [`${id} isRight`, text.isRight],
  ]),
  ...[...COULD_FALL_CAUTIONS, ...LIMIT_CAUTIONS, ...DRAWING_CAUTIONS].map(
    (text): Placed => ['caution', text],
  ),
];

const phrases: readonly Placed[] = [
  ...rows.flatMap(({ check, row }) =>
    [row.name, row.caughtAt, ...row.alsoCalled.split(', ')].map((text): Placed => [check, text]),
  ),
  ...lookAlikes.map(([id, { name }]): Placed => [id, name]),
];

const wrong = (texts: readonly Placed[], isWrong: (text: string) => boolean) =>
  texts.filter(([, text]) => isWrong(text)).map(([where, text]) => `${where}: ${text}`);

describe('the rows', () => {
  test('stand in the order of the checks, one each', () => {
    expect(Object.keys(CATALOGUE)).toEqual([...CHECKS]);
  });

  test('have names of their own, look-alikes too', () => {
    const names = [...rows.map(({ row }) => row.name), ...lookAlikes.map(([, { name }]) => name)].map(
      (name) => name.toLowerCase(),
    );
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  });

  test('have other names to search by, none twice in a row', () => {
    const namesOf = ({ row }: (typeof rows)[number]) => row.alsoCalled.split(', ');
    const few = rows.filter((each) => new Set([each.row.name, ...namesOf(each)]).size < 4);
    const twice = rows.filter((each) => new Set(namesOf(each)).size < namesOf(each).length);
    expect([...few, ...twice].map(({ check }) => check)).toEqual([]);
  });

  test('say in one sentence what is seen and how it is measured', () => {
    const more = rows.flatMap(({ row }) =>
      [row.looksLike, row.measuredBy].filter((text) => text.slice(0, -1).includes('. ')),
    );
    expect(more).toEqual([]);
  });

  test('say why it matters in one or two sentences', () => {
    expect(
      rows.filter(({ row }) => row.whyItMatters.split('. ').length > 2).map(({ check }) => check),
    ).toEqual([]);
  });

  test('name the view that shows it', () => {
    const view = /front view|section|plan|behind a lifted unit|before cover|mixing ticket/i;
    expect(rows.filter(({ row }) => !view.test(row.whereToLook)).map(({ check }) => check)).toEqual([]);
  });

  test('say who decides when it could fall', () => {
    const couldFall = rows.filter(({ row }) => row.hazard === 'could fall');
    expect(couldFall.length).toBe(11);
    expect(
      couldFall
        .filter(({ row }) => !/competent|engineer|mason/.test(row.putsRight))
        .map(({ check }) => check),
    ).toEqual([]);
    expect(
      couldFall.filter(({ row }) => !/eep people away/.test(row.putsRight)).map(({ check }) => check),
    ).toEqual([]);
  });

  test('leave what carries the wall to a licensed engineer', () => {
    const support = rows.filter(
      ({ row }) => ['support', 'opening'].includes(row.markedOn[0] ?? '') && row.hazard === 'could fall',
    );
    expect(support.map(({ check }) => check)).toEqual([
      'overhang-too-far',
      'no-bearing-return',
      'short-lintel-bearing',
      'no-lintel',
      'weak-angle',
    ]);
    expect(support.filter(({ row }) => !row.putsRight.includes('licensed engineer'))).toEqual([]);
  });

  test('are confused only with what exists, and not with themselves', () => {
    const known: readonly string[] = [...CHECKS, ...LOOK_ALIKES];
    const unknown = rows.flatMap(({ check, row }) =>
      row.mistakenFor.filter((id) => !known.includes(id) || id === check).map((id) => `${check}: ${id}`),
    );
    expect(unknown).toEqual([]);
    expect(rows.filter(({ row }) => row.mistakenFor.length === 0)).toEqual([]);
  });
});

describe('the look-alikes', () => {
  test('are those of the generator', () => {
    expect(Object.keys(LOOK_ALIKE_TEXTS)).toEqual([...LOOK_ALIKES]);
  });

  test('are each taken for some fault', () => {
    const taken: readonly string[] = rows.flatMap(({ row }) => row.mistakenFor);
    expect(LOOK_ALIKES.filter((id) => !taken.includes(id))).toEqual([]);
  });
});

describe('every text', () => {
  test('says something', () => {
    expect(wrong([...prose, ...phrases], (text) => text.trim() === '' || text !== text.trim())).toEqual([]);
  });

  test('has no figure: figures come from the limits', () => {
    const figure = /\d|%|\b(per ?cent|millimet|inch|feet|degrees?\b)/i;
    expect(wrong([...prose, ...phrases], (text) => figure.test(text))).toEqual([]);
  });

  test('is made of whole sentences of at most 25 words', () => {
    expect(wrong(prose, (text) => !/^[A-Z].*[.!?]$/.test(text))).toEqual([]);
    expect(wrong(prose, (text) => sentencesOf(text).some((sentence) => lengthOf(sentence) > 25))).toEqual([]);
  });

  test('or is a short phrase without a full stop', () => {
    expect(wrong(phrases, (text) => lengthOf(text) > 14 || text.endsWith('.'))).toEqual([]);
  });
});

describe('cautions', () => {
  const all = COULD_FALL_CAUTIONS.join(' ');
  test.each([
    'Keep people and animals away',
    'Do not pull, push, hit or shake',
    'Do not climb',
    'farther out than the wall is tall',
    'competent person',
  ])('what could fall: %s', (words) => {
    expect(all).toContain(words);
  });

  test('the danger comes first', () => {
    expect(COULD_FALL_CAUTIONS[0]).toBe('This could fall. Keep people and animals away now.');
  });

  test('a drawing says that it is one', () => {
    expect(DRAWING_CAUTIONS.join(' ')).toBe(
      'This is a drawing, not your wall. Local code and the authority having jurisdiction decide.',
    );
  });

  test('limits defer to the local code', () => {
    expect(LIMIT_CAUTIONS.join(' ')).toContain(
      'Local code, the drawings and the authority having jurisdiction decide.',
    );
  });
});

describe('finding a fault by its words', () => {
  const cases: readonly (readonly [string, readonly CheckId[]])[] = [
    ['bee hole', ['open-head']],
    ['Bee-holes', ['open-head']],
    ['shelf', ['overhang-too-far', 'weak-angle', 'raked-thin-veneer']],
    // Catalogue order is kept among equals; 'ledge' stands in other names, and in what two others look like.
    ['ledge', ['overhang-too-far', 'no-bearing-return', 'no-flashing', 'short-flashing']],
    ['weep hole', ['weeps-too-far-apart', 'blocked-weep']],
    ['cavity tray', ['no-flashing']],
    // In the name first, then in other names.
    ['perp', ['perpend-drift', 'thick-joint', 'thin-joint', 'open-head']],
    ['belly', ['bulge-or-hollow']],
    ['hollow', ['bulge-or-hollow', 'missing-back-mortar', 'ring-buttered-back']],
    ['lippage', ['proud-unit']],
    ['oversailing', ['overhang-too-far']],
    ['storey rod', ['gauge-drift']],
    ['story pole', ['gauge-drift']],
    ['dot and dab', ['missing-back-mortar']],
    ['angle iron', ['weak-angle', 'short-lintel-bearing', 'no-lintel']],
    ['ties', ['ties-too-far-apart', 'no-tie-at-edge', 'shallow-tie', 'tie-near-face', 'thin-tie']],
    ['jamb tie', ['no-tie-at-edge']],
    ['gone off', ['stale-mortar']],
    ['  OUT OF PLUMB ', ['out-of-plumb', 'perpend-drift']],
    ['squeezed', ['sliver-piece']],
    // Every word has to match.
    ['bee lintel', []],
    ['giraffe', []],
    // A word is matched from its beginning: 'pend' is in 'perpend' but begins nothing.
    ['pend', []],
  ];
  test.each(cases)('%s', (words, faults) => {
    expect(findFaults(words)).toEqual(faults);
  });

  test.each(['', '   ', ' -, '])('no words (%j): all, in catalogue order', (words) => {
    expect(findFaults(words)).toEqual([...CHECKS]);
  });
});
