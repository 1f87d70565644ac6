import type { Reading } from '../../components/practice/part-facts';
import type { Tie } from '../../lib/wall/model';
import type { PanelSurvey, Survey } from '../../lib/wall/survey';

/** Ties on one stud are within this of each other, mm. */
const SAME_STUD = 60;

export function tieReadings(id: string, { ties }: PanelSurvey): readonly Reading[] {
  const tie = ties.find((each) => each.id === id);
  if (!tie) return [];
  return [
    { label: 'Thickness', mm: tie.thickness, fine: true },
    { label: 'Width', mm: tie.width },
    { label: 'Length in the bed', mm: tie.embedment },
    ...reach('Next tie up', ties, (each) => (sameStud(each, tie) ? each.y - tie.y : 0)),
    ...reach('Next tie down', ties, (each) => (sameStud(each, tie) ? tie.y - each.y : 0)),
    ...reach('Next stud, left', ties, (each) => (sameStud(each, tie) ? 0 : tie.x - each.x)),
    ...reach('Next stud, right', ties, (each) => (sameStud(each, tie) ? 0 : each.x - tie.x)),
  ];
}

function sameStud(a: Tie, b: Tie): boolean {
  return Math.abs(a.x - b.x) <= SAME_STUD;
}

/** The least distance over nothing; no reading where there is no such tie. */
function reach(label: string, ties: readonly Tie[], distance: (tie: Tie) => number): readonly Reading[] {
  const ahead = ties.map(distance).filter((mm) => mm > 0);
  return ahead.length === 0 ? [] : [{ label, mm: Math.min(...ahead) }];
}

export function supportReadings(id: string, { wall, panels }: Survey): readonly Reading[] {
  const support = wall.supports.find((each) => each.id === id);
  if (!support) return [];
  const { angle } = support;
  const opening = wall.openings.find((each) => each.id === support.opening);
  const placed = panels.find(({ panel }) => panel.id === support.panel)?.placed ?? [];
  const faces = placed.filter((each) => each.support === support).map(({ unit }) => unit.set);
  const overhang = Math.max(0, ...faces) - support.front;
  return [
    { label: 'Made of', text: support.material },
    ...(angle
      ? ([
          { label: 'Upright leg', mm: angle.vertical },
          { label: 'Flat leg', mm: angle.horizontal },
          { label: 'Thickness', mm: angle.thickness },
        ] as const)
      : []),
    ...(opening
      ? [
          { label: 'Clear span', mm: opening.width },
          { label: 'Bearing, left', mm: opening.x - support.fromX },
          { label: 'Bearing, right', mm: support.toX - opening.x - opening.width },
        ]
      : [{ label: 'Length', mm: support.toX - support.fromX }]),
    { label: 'Unit depth', mm: wall.family.depth },
    { label: 'Units stand past by', mm: Math.max(0, overhang) },
  ];
}

export function openingReadings(id: string, { openings, supports, ties }: PanelSurvey): readonly Reading[] {
  const opening = openings.find((each) => each.id === id);
  if (!opening) return [];
  const lintel = supports.find((support) => support.opening === id);
  const beside = ties.filter(({ y }) => y >= opening.y && y <= opening.y + opening.height);
  return [
    { label: 'Width', mm: opening.width },
    { label: 'Height', mm: opening.height },
    { label: 'Over it', text: lintel ? `a ${lintel.material} lintel` : 'no lintel' },
    ...reach('Nearest tie, left', beside, ({ x }) => opening.x - x),
    ...reach('Nearest tie, right', beside, ({ x }) => x - opening.x - opening.width),
  ];
}
