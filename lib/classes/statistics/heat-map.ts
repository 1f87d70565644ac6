import { countsOf } from './confusion';

/** One mark of one learner on the wall in question. */
export interface GroupMark {
  readonly learner: string;
  readonly part: string;
  readonly fault: string;
}

/** How many of the group marked one part. */
export interface Heat {
  readonly part: string;
  /** Learners, not marks: who marks a part twice counts once. */
  readonly learners: number;
  /** Of the learners who handed this wall in, 0 to 1. */
  readonly share: number;
  /** What they called it, commonest first; a learner counts once a name. */
  readonly names: readonly (readonly [fault: string, learners: number])[];
}

/** Where the group marked, the most marked part first. `handedIn` counts the learners who handed the wall in, marks or none. */
export function heatOf(marks: readonly GroupMark[], handedIn: number): readonly Heat[] {
  const parts = [...new Set(marks.map(({ part }) => part))];
  return parts
    .map((part): Heat => {
      const own = marks.filter((mark) => mark.part === part);
      const once = new Map(own.map((mark) => [`${mark.learner} ${mark.fault}`, mark.fault]));
      const learners = new Set(own.map(({ learner }) => learner)).size;
      return {
        part,
        learners,
        share: handedIn === 0 ? 0 : learners / handedIn,
        names: [...countsOf([...once.values()])].sort(
          ([a, often], [b, other]) => other - often || (a < b ? -1 : 1),
        ),
      };
    })
    .sort((a, b) => b.learners - a.learners || (a.part < b.part ? -1 : 1));
}
