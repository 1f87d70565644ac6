import type { Season } from '../../failing/state/model';
import { deflectionRatio } from '../../trade/settlement';
import type { Mm } from '../../units';
import type { PanelSurvey } from '../../wall/survey';
import { between, type Mechanism, mustStand, type Site, shareAfter } from '../mechanism';
import { AT_REST, type Field, turnedAbout } from '../parting/field';
import { tearApart } from '../parting/part';
import { type Tear, weakestPath } from '../parting/weakest-path';

/** A corner loses its footing: the part over it turns about the place where the footing still holds. */
export const CORNER_SETTLEMENT: Mechanism = {
  name: 'corner-settlement',
  what: 'the ground gives under one end, and the wall over it turns down about the last firm place',
  showsAfter: 5,
  lacks: mustStand,
  act: (site) => settle(site, shareAfter(site.years, 4)),
};

/** How much of the shrinkage of a clay soil is there in each season: ours, after "opens in summer, closes in winter". */
const DRY: Readonly<Record<Season, number>> = { spring: 0.55, summer: 1, autumn: 0.9, winter: 0.45 };

/** The same, but the ground dries and swells with the seasons. */
export const TREE_DRYING: Mechanism = {
  name: 'tree-drying',
  what: 'a tree dries the clay under one end: that end goes down in summer and comes back in winter',
  showsAfter: 5,
  lacks: mustStand,
  act: (site) => settle(site, shareAfter(site.years, 4) * DRY[site.season]),
};

/** No wall stands open wider than this at its head and still stands, mm: ours, in the middle of the fourth BRE class. */
const MOST_OPEN: Mm = 20;

function settle({ draft, main, survey, chance }: Site, share: number): void {
  const { length } = main.panel;
  const isLeft = chance.happens(50);
  const long = clearOfDoors(main, between(chance, 0.35, 0.48) * length, isLeft);
  const drop = Math.min(between(chance, 5, 10), (MOST_OPEN * long) / headOf(main)) * share;
  const root = isLeft ? long : length - long;
  const field = turnedAbout(root, 0, (isLeft ? 1 : -1) * (drop / long));
  const tear: Tear = {
    left: isLeft ? field : AT_REST,
    right: isLeft ? AT_REST : field,
    unitStrength: between(chance, 1.5, 5),
    bond: between(chance, 0.4, 1),
  };
  const parting = weakestPath(main, survey.wall.joint, root, tear);
  if (parting !== null) tearApart(draft, main, parting, tear.left, tear.right);
}

/** The same length from the end, or past the door that it would fall in. */
function clearOfDoors({ openings, panel }: PanelSurvey, long: Mm, isLeft: boolean): Mm {
  const root = isLeft ? long : panel.length - long;
  const door = openings.find(
    ({ kind, x, width }) => kind === 'door' && root > x - 60 && root < x + width + 60,
  );
  if (door === undefined) return long;
  return isLeft ? door.x - 120 : panel.length - door.x - door.width - 120;
}

/** Both ends stand and the middle goes down: the two halves turn about the head of the wall, and the crack opens at its foot. */
export const SAGGING: Mechanism = {
  name: 'sagging',
  what: 'the ground gives under the middle: the wall sags, and opens at its foot',
  showsAfter: 5,
  lacks: standsWithoutDoor,
  act: (at) => bend(at, -1),
};

/** The middle stands and both ends go down: the crack opens at the head. */
export const HOGGING: Mechanism = {
  name: 'hogging',
  what: 'the ground gives under both ends: the wall hogs over its middle, and opens at its head',
  showsAfter: 5,
  lacks: standsWithoutDoor,
  act: (at) => bend(at, 1),
};

function standsWithoutDoor(survey: Parameters<Mechanism['lacks']>[0], main: PanelSurvey): string | null {
  if (survey.wall.masonry === 'anchored' && main.openings.every(({ kind }) => kind !== 'door')) return null;
  return 'a wall that stands on a ledge and has no door in it';
}

/** Strains of slight to moderate damage, 0.15 to 0.3 %: Burland’s limits, the third class of the BRE. */
const STRAINS: readonly [least: number, most: number] = [0.0015, 0.003];

function bend({ draft, main, survey, chance, years }: Site, way: 1 | -1): void {
  const { length } = main.panel;
  const middle = length * between(chance, 0.46, 0.54);
  const strain = between(chance, STRAINS[0], STRAINS[1]) * shareAfter(years, 4);
  const deflection = length * deflectionRatio(length / headOf(main), way > 0 ? 'hogging' : 'sagging', strain);
  const pivot: Mm = way > 0 ? 0 : headOf(main);
  const half = (from: Mm, sign: 1 | -1): Field => {
    const turned = turnedAbout(middle, pivot, (sign * way * deflection) / from);
    // Sagging takes the middle down; hogging the ends.
    const down = way > 0 ? 0 : deflection;
    return { ...turned, at: (x, y) => ({ ...turned.at(x, y), v: turned.at(x, y).v - down }) };
  };
  const tear: Tear = {
    left: half(middle, 1),
    right: half(length - middle, -1),
    unitStrength: between(chance, 1.5, 5),
    bond: between(chance, 0.4, 1),
  };
  const parting = weakestPath(main, survey.wall.joint, middle, tear);
  if (parting !== null) tearApart(draft, main, parting, tear.left, tear.right);
}

function headOf({ courses }: PanelSurvey): Mm {
  const last = courses[courses.length - 1]?.[0]?.unit;
  return last === undefined ? 0 : last.y + last.height;
}
