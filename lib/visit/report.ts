import { repairOf } from '../failing/state/repair';
import type { Measured } from './grade-visit';
import type { Condition, Shown } from './shown';

/** How soon something is done, the soonest first. */
export type Urgency = 'now' | 'soon' | 'in its turn';

/** One finding as one reports it to the owner and to whoever is licensed to judge it. */
export interface ReportCard {
  readonly shown: Shown;
  readonly urgency: Urgency;
  readonly requirement: string;
  readonly consequence: string;
  readonly hazard: string;
  readonly act: string;
  readonly who: string;
  readonly unseen: string;
}

type Told = Omit<ReportCard, 'shown'>;

/** Common practice in our own words; of cracks besides, the words of repair of BRE Digest 251 (`repairOf`). */
const TOLD: Readonly<Record<Condition, Told>> = {
  missing: {
    urgency: 'now',
    requirement: 'A wall stands whole: every unit carries or covers something.',
    consequence: 'What lay on it hangs or leans on its neighbours, and water gets in.',
    hazard: 'Others may follow it down.',
    act: 'Keep the ground closed. Look for what has fallen, and keep it.',
    who: 'Licensed engineer; the authority where people pass.',
    unseen: 'What its bed or back looks like from near by, and the units behind.',
  },
  loose: {
    urgency: 'now',
    requirement: 'Every unit is bonded, or held by what lies on it.',
    consequence: 'It comes down in wind, in frost, at a touch, or for no reason that is seen.',
    hazard: 'It could kill whoever stands below.',
    act: 'Keep the ground closed. Touch nothing. It is taken down or held as the engineer says.',
    who: 'Licensed engineer and the authority, at once; then a contractor.',
    unseen: 'What still holds it behind the face.',
  },
  cracked: {
    urgency: 'soon',
    requirement: 'Work is whole when it is laid; a crack means that something has moved, or is moving.',
    consequence: 'Water gets in, and units beside the crack may work loose.',
    hazard: 'Its width alone says nothing of the danger.',
    act: 'Picture it with a scale and the date. Do not fill it before its cause is known.',
    who: 'Licensed engineer.',
    unseen: 'Whether it still grows: that takes readings through a year.',
  },
  moved: {
    urgency: 'soon',
    requirement: 'A wall stays where it was laid: level, plumb and in line.',
    consequence: 'Bearings get short and joints open.',
    hazard: 'What leans or has slid far enough falls.',
    act: 'Measure it again from fixed points. Keep people from below it till then.',
    who: 'Licensed engineer.',
    unseen: 'Ties, bearings and footings.',
  },
  flaked: {
    urgency: 'in its turn',
    requirement: 'Faces are sound and shed water.',
    consequence: 'What is left is softer and takes in more water.',
    hazard: 'Flakes from overhead can hurt.',
    act: 'Find where the water or the blow comes from, and stop that first.',
    who: 'A mason, once the cause is known.',
    unseen: 'How wet the units are inside.',
  },
  'mortar gone': {
    urgency: 'in its turn',
    requirement: 'Joints are full and no softer than they were meant to be.',
    consequence: 'Units lose their bond, course by course.',
    hazard: 'Those at the top and at edges come loose first.',
    act: 'Have the mortar looked at; then rake out and point with one no harder than the old.',
    who: 'A mason, once the cause is known.',
    unseen: 'How deep it has gone behind what can be seen.',
  },
};

const ORDER: readonly Urgency[] = ['now', 'soon', 'in its turn'];

/** One card a finding, the most urgent first. What shows on a unit that may come down is urgent, whatever it is. */
export function reportOf({ shown, risk }: Measured): readonly ReportCard[] {
  const cards = shown.map((each): ReportCard => {
    const told = TOLD[each.condition];
    const isOnLoose = each.parts.some((part) => risk.loose.has(part));
    const repair =
      each.condition === 'cracked' && each.most !== null
        ? ` To make good by its width: ${repairOf(each.most).words}.`
        : '';
    return {
      ...told,
      shown: each,
      act: told.act + repair,
      urgency: isOnLoose ? 'now' : told.urgency,
    };
  });
  return ORDER.flatMap((urgency) => cards.filter((card) => card.urgency === urgency));
}
