import type { RuleSetId } from '../../limits/limit';
import { limitOf } from '../../limits/limits';
import type { Wall } from '../../wall/model';
import type { Departure, Fitted } from './departure';
import { JOINT_DEPARTURES } from './joints';
import { LINE_DEPARTURES } from './line';
import { MORTAR_DEPARTURES } from './mortar';
import { SUPPORT_DEPARTURES } from './support';
import { TIE_AND_BACK_DEPARTURES } from './ties-and-backs';
import { placesOn } from './true-wall';
import { WATER_DEPARTURES } from './water';

export const DEPARTURES: readonly Departure[] = [
  ...JOINT_DEPARTURES,
  ...LINE_DEPARTURES,
  ...SUPPORT_DEPARTURES,
  ...WATER_DEPARTURES,
  ...TIE_AND_BACK_DEPARTURES,
  ...MORTAR_DEPARTURES,
];

/** A departure together with its place on the wall. */
export interface Slider extends Departure {
  readonly fitted: Fitted;
}

/** What can be set on a wall laid true, in the order of the families. */
export function slidersOf(wall: Wall, rules: RuleSetId): readonly Slider[] {
  const places = placesOn(wall, rules);
  return DEPARTURES.flatMap((departure) => {
    const limit = limitOf(rules, departure.limit);
    const fitted = limit && departure.fit(wall, limit, places, rules);
    return fitted ? [{ ...departure, fitted }] : [];
  });
}

/** Values by the departure's id; one left out stays sound. */
export type Values = Readonly<Record<string, number>>;

/** The wall with every value set. */
export function adjusted(wall: Wall, sliders: readonly Slider[], values: Values): Wall {
  return sliders.reduce((now, { id, fitted }) => {
    const value = values[id];
    return value === undefined || value === fitted.sound ? now : fitted.change(now, value);
  }, wall);
}
