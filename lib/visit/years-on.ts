import { marginsOf } from '../failing/margins/margins';
import { type FailingWall, SEASONS, type Season } from '../failing/state/model';
import { type Chance, chanceOf } from '../generate/chance';
import { acted, lackingFor } from '../mechanisms/act';
import type { Mechanism } from '../mechanisms/mechanism';
import { MECHANISMS } from '../mechanisms/mechanisms';
import type { Survey } from '../wall/survey';
import { MAY_COME_DOWN } from './risk';

/** Streams of chance from here on are those of mechanisms and of the generator. */
const STREAM = 4900;
/** On so many walls in a hundred something may come down, where any mechanism that fits makes it so. */
const LOOSE_PERCENT = 45;
const TRIES = 6;
const MOST_YEARS = 45;

/** What worked on a wall, for how long, and when one is called to it: as the command line takes it. */
export interface YearsOn {
  readonly mechanism: string;
  readonly years: number;
  readonly season: Season;
  readonly failing: FailingWall;
}

/** The wall as one is called to it. The same seed gives the same visit. */
export function yearsOn(survey: Survey, seed: number): YearsOn {
  const chance = chanceOf(seed, STREAM);
  const fitting = MECHANISMS.filter((each) => lackingFor(each, survey) === null);
  const wantsLoose = chance.happens(LOOSE_PERCENT);
  let drawn = drawnBy(survey, seed, fitting, chance);
  for (let tries = 1; wantsLoose && tries < TRIES && !hasLoose(drawn.failing); tries++)
    drawn = drawnBy(survey, seed, fitting, chance);
  return drawn;
}

function drawnBy(survey: Survey, seed: number, fitting: readonly Mechanism[], chance: Chance): YearsOn {
  const mechanism = chance.pick(fitting);
  const years = mechanism.showsAfter + chance.whole(5, MOST_YEARS);
  const season = chance.pick(SEASONS);
  return { mechanism: mechanism.name, years, season, failing: acted(survey, mechanism, years, season, seed) };
}

function hasLoose(failing: FailingWall): boolean {
  return marginsOf(failing).some(({ margin }) => margin < MAY_COME_DOWN);
}
