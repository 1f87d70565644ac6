import type { FailingWall, Season } from '../failing/state/model';
import { chanceOf } from '../generate/chance';
import type { PanelSurvey, Survey } from '../wall/survey';
import { finished, freshDraft } from './draft';
import type { Mechanism } from './mechanism';
import { MECHANISMS } from './mechanisms';

/** Streams of chance below this are the generator's. */
const FIRST_STREAM = 5000;

/** A mechanism that is not known, or that this wall has no place for. */
export class MechanismError extends Error {
  override name = 'MechanismError';
}

export function mechanismNamed(name: string): Mechanism {
  const known = MECHANISMS.find((each) => each.name === name);
  if (known !== undefined) return known;
  throw new MechanismError(
    `mechanism: "${name.slice(0, 40)}" is not one of ${MECHANISMS.map((each) => each.name).join(', ')}`,
  );
}

/** What is missing for a mechanism to work on a wall; null where it can. */
export function lackingFor(mechanism: Mechanism, survey: Survey): string | null {
  return mechanism.lacks(survey, mainOf(survey));
}

/** The wall after a mechanism has worked on it for so many years, seen in a season. The same seed gives the same parameters. @throws MechanismError */
export function acted(
  survey: Survey,
  mechanism: Mechanism,
  years: number,
  season: Season,
  seed: number,
): FailingWall {
  const main = mainOf(survey);
  const lacking = mechanism.lacks(survey, main);
  if (lacking !== null)
    throw new MechanismError(`mechanism: ${mechanism.name} needs ${lacking}; this wall is none`);
  const draft = freshDraft(survey);
  const chance = chanceOf(seed, FIRST_STREAM + MECHANISMS.indexOf(mechanism));
  mechanism.act({ survey, main, draft, chance, years, season });
  return finished(survey, draft, years, season);
}

function mainOf({ panels }: Survey): PanelSurvey {
  const [first] = panels;
  if (first === undefined) throw new MechanismError('mechanism: the wall has no panel');
  return panels.reduce((longest, each) => (each.panel.length > longest.panel.length ? each : longest), first);
}
