import type { Drawing } from '../../drawing/shape';
import type { LengthSystem } from '../../units';
import type { SurveyedWall } from '../../wall/surveyed';
import { cutOf, type View, ViewError } from '../view';
import { baseSection } from './base';
import { headSection } from './lintel';

/** The cut a section view asks for. @throws ViewError where the wall has no such cut. */
export function sectionView(
  surveyed: SurveyedWall,
  view: Extract<View, { kind: 'section' }>,
  system: LengthSystem,
): Drawing {
  const cut = cutOf(surveyed.wall, view);
  const survey = surveyed.panels.find(({ panel }) => panel.id === cut?.panel);
  if (cut === null || survey === undefined)
    throw new ViewError(`section: this wall has none at its ${view.at}`);
  const support = survey.supports.find(({ id }) => id === cut.support);
  if (cut.at === 'base') {
    if (support === undefined) throw new ViewError(`section: no ledge "${cut.support}"`);
    return baseSection(surveyed, survey, support, system);
  }
  const opening = survey.openings.find(({ id }) => id === (support?.opening ?? cut.support));
  if (opening === undefined) throw new ViewError(`section: no opening under "${cut.support}"`);
  return headSection(surveyed, survey, opening, support ?? null, system);
}
