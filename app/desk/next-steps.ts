import type { GroupRow } from '../../lib/store/groups/groups';
import type { WorkInGroup } from '../../lib/store/set-work';

export interface Step {
  readonly words: string;
  readonly href: string;
}

/** A group with its work, as the desk looks at it. */
export interface GroupAtDesk {
  readonly group: GroupRow;
  readonly works: readonly WorkInGroup[];
}

/** What to do next in a group, the most pressing first; empty when nothing waits. */
export function nextSteps({ group, works }: GroupAtDesk, at: number): readonly Step[] {
  if (group.closedAt !== null) return [];
  const here = `/desk/groups/${group.id}`;
  const steps: Step[] = [];
  if (group.learners === 0)
    steps.push({ words: 'Put names on the roster, or give out the code to join.', href: here });
  if (works.length === 0) steps.push({ words: 'Set the first work.', href: `${here}/set` });
  for (const work of works) {
    const isOver = work.dueAt !== null && at > work.dueAt + work.graceMs;
    if (work.state === 'draft') {
      steps.push({
        words: `“${work.title}” is a draft. Look at it, then set it.`,
        href: `/desk/work/${work.id}`,
      });
    } else if (work.waiting > 0 && work.release === 'by hand' && work.releasedAt === null) {
      steps.push({
        words: `“${work.title}”: ${work.waiting} marked, not shown yet.`,
        href: `/desk/work/${work.id}/book`,
      });
    } else if (work.state === 'set' && isOver && work.handedIn < group.learners) {
      const missing = group.learners - work.handedIn;
      steps.push({
        words: `“${work.title}” was due. ${missing === 1 ? '1 learner has' : `${missing} learners have`} not handed in.`,
        href: `/desk/work/${work.id}/book`,
      });
    }
  }
  return steps;
}

/** What is set and still to come, what is due first comes first. */
export function dueNext(
  groups: readonly GroupAtDesk[],
  at: number,
): readonly (WorkInGroup & { readonly groupName: string; readonly of: number })[] {
  return groups
    .flatMap(({ group, works }) =>
      works.map((work) => ({ ...work, groupName: group.name, of: group.learners })),
    )
    .filter(({ state, dueAt, graceMs }) => state === 'set' && dueAt !== null && at <= dueAt + graceMs)
    .sort((a, b) => (a.dueAt ?? 0) - (b.dueAt ?? 0));
}
