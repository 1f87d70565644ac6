import { causesOf } from '../failing/causes/causes';
import type { Brief } from '../generate/brief';
import type { Wall } from '../wall/model';
import { type SurveyedWall, surveyedWall } from '../wall/surveyed';
import type { Measured } from './grade-visit';
import { riskOf } from './risk';
import { shownOn } from './shown';
import { type YearsOn, yearsOn } from './years-on';

/** A visit with all that its page asks of it, worked out once. */
export interface OpenVisit extends Measured, YearsOn {
  /** The wall as it was laid: its parts are what one points at, those that have come away too. */
  readonly laid: SurveyedWall;
}

export function openVisit({ wall, brief }: { readonly wall: Wall; readonly brief: Brief }): OpenVisit {
  const laid = surveyedWall(wall);
  const years = yearsOn(laid, brief.seed);
  const { failing } = years;
  const risk = riskOf(failing);
  return { ...years, laid, risk, shown: shownOn(failing, risk), causes: causesOf(failing) };
}
