import { cutsOf } from '../views/view';
import type { Wall } from '../wall/model';

/** A family of faults to look for once more, and the view to look in. */
export interface ReviewQuestion {
  readonly family: string;
  readonly question: string;
  readonly view: string;
}

/** What to look for once more before handing in, with the view for it. */
export function reviewQuestions(wall: Wall): readonly ReviewQuestion[] {
  const base = cutsOf(wall)[0];
  const joints = {
    family: 'Joints',
    question: 'Is each one full, and of an even thickness?',
    view: 'front',
  };
  const line = {
    family: 'Line',
    question: 'Is it level, plumb and flat? Do the perpends stay in line?',
    view: 'front',
  };
  const bond = { family: 'Bond', question: 'Is any piece too small?', view: 'front' };
  const mortar = { family: 'Mortar', question: 'Do the mixing tickets add up?', view: 'tickets' };
  if (wall.masonry === 'adhered') {
    const back = { family: 'Backs', question: 'Did you lift units here and there?', view: 'behind' };
    return [back, joints, line, bond, mortar];
  }
  return [
    {
      family: 'Support',
      question:
        'Does every part of the wall stand on something? Is there a lintel over each opening, long and strong enough?',
      view: base ? `cut:${base.support}` : 'front',
    },
    {
      family: 'Ties',
      question: 'Are they close enough, near the edges too, and deep enough?',
      view: 'before-cover',
    },
    joints,
    line,
    bond,
    mortar,
  ];
}
