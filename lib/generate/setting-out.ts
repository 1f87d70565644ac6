import type { RuleSetId } from '../limits/limit';
import { limitOf } from '../limits/limits';
import { type Bond, TALL_COURSES, type WallKind } from '../wall/model';
import type { Chance } from './chance';
import { hasNeed } from './faults';
import { GABLE_TOP_UNITS } from './lay';
import type { Plan, Spoil } from './plan';

export type SettingOut = Pick<
  Plan,
  | 'kind'
  | 'masonry'
  | 'rules'
  | 'modules'
  | 'courses'
  | 'mirrored'
  | 'bond'
  | 'soldiers'
  | 'quoins'
  | 'finish'
  | 'thinBed'
>;

/** What the wall is built of and how it is set out, as its faults allow. */
export function settingOutOf(
  kind: WallKind,
  masonry: 'anchored' | 'adhered',
  rules: RuleSetId,
  spoils: readonly Spoil[],
  chance: Chance,
): SettingOut {
  const [soldiers, quoins, stone] = [
    chance.happens(SOLDIERS_PERCENT),
    chance.happens(QUOINS_PERCENT),
    chance.happens(STONE_PERCENT[masonry]),
  ];
  const anchored = masonry === 'anchored';
  const tall = anchored && !stone && !spoils.some(({ fault }) => hasNeed(fault, 'no tall units'));
  const withQuoins = quoins && tall;
  const bond = bondFor(kind, spoils, chance);
  return {
    ...incidentals(kind, rules, withQuoins, chance),
    masonry,
    rules,
    // Beside quoins a third bond would leave thirds that come again too seldom to be closers.
    bond: withQuoins ? 'running' : bond,
    soldiers: soldiers && tall && (kind === 'window-panel' || kind === 'door-corner'),
    quoins: withQuoins,
    finish: stone ? 'squared stone' : 'brick',
    thinBed: anchored && thinBedFor(rules, spoils, chance),
  };
}

/** In a hundred walls that can have them: soldiers over openings, quoins; walls of squared stone. */
const SOLDIERS_PERCENT = 45;
const QUOINS_PERCENT = 30;
const STONE_PERCENT = { anchored: 20, adhered: 50 } as const;

/** Units more than a plain panel: beside an opening there must be field to tie. */
const EXTRA_UNITS: Readonly<Record<WallKind, number>> = {
  'plain-panel': 0,
  'window-panel': 4,
  'door-corner': 4,
  'gable-end': 2,
};

/** Courses of a wall, from and to. Over a door a storey: its rows of ties, which count down from the top in the United Kingdom, clear the head. */
function coursesOf(kind: WallKind, rules: RuleSetId): readonly [least: number, most: number] {
  if (kind !== 'door-corner') return [28, 34];
  return rules === 'united-kingdom' ? [33, 34] : [39, 41];
}

function incidentals(
  kind: WallKind,
  rules: RuleSetId,
  quoins: boolean,
  chance: Chance,
): Pick<Plan, 'kind' | 'modules' | 'courses' | 'mirrored'> {
  const modules = chance.whole(12, 15) + EXTRA_UNITS[kind];
  const courses = chance.whole(...coursesOf(kind, rules));
  // The rake begins with a course that has whole units at its ends, so that every piece cut to it is of a whole one.
  const rakeFrom = 17 + 2 * chance.whole(0, 1);
  return {
    kind,
    modules,
    // A pile of quoins is of whole ones.
    courses:
      kind === 'gable-end'
        ? (quoins ? RAKE_OVER_QUOINS : rakeFrom) + modules - GABLE_TOP_UNITS
        : courses - (quoins ? courses % TALL_COURSES : 0),
    mirrored: chance.happens(50),
  };
}

/** The course at which a rake begins over whole quoins: the even ones then begin with whole units. */
const RAKE_OVER_QUOINS = 22;

/** Third bond where nothing on the wall leans on the half lap. */
function bondFor(kind: WallKind, spoils: readonly Spoil[], chance: Chance): Bond {
  const third = chance.happens(30);
  const halfLap = kind === 'gable-end' || spoils.some(({ fault }) => hasNeed(fault, 'half lap'));
  return third && !halfLap ? 'third' : 'running';
}

/** In a hundred walls whose rules speak of units on a 75 mm bed, this many are of them whatever their faults. */
const THIN_PERCENT = 15;

function thinBedFor(rules: RuleSetId, spoils: readonly Spoil[], chance: Chance): boolean {
  const thin = chance.happens(THIN_PERCENT) || spoils.some(({ fault }) => hasNeed(fault, 'thin units'));
  return thin && limitOf(rules, 'rake-on-thin-veneer') !== undefined;
}
