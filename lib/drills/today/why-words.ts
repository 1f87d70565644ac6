import { TOPIC_TITLES } from '../../generate/topics';
import type { Step } from '../../learning/chooser';
import type { Standing } from '../../learning/standing';

const DAY = 86_400_000;

/** One line that says why this exercise comes now. It tells nothing of what is on the wall. */
export function whyWords(step: Step, { families }: Standing, now: number): string {
  const title = TOPIC_TITLES[step.family];
  switch (step.reason) {
    case 'new':
      if (step.kind === 'guided wall')
        return `${title}: this is new to you, so the first wall is shown to you.`;
      return step.kind === 'pair'
        ? `${title}: you have been shown a wall, so now compare two.`
        : `${title}: you have been shown how, so now read one on your own.`;
    case 'due': {
      const review = families.find(({ family }) => family === step.family)?.review ?? null;
      return `${title}: ${review === null ? 'due' : daysAgo(now - review.lastAt)}, so it is time to look again.`;
    }
    case 'weak':
      return `${title}: you do not read these reliably yet.`;
    case 'proof':
      return `${title}: you read these well. A few more walls will prove it.`;
    case 'kept':
      return 'You have shown that you can read all of them. This one keeps your eye in.';
    default: {
      const never: never = step.reason;
      throw new RangeError(`no words for ${String(never)}`);
    }
  }
}

function daysAgo(ms: number): string {
  const days = Math.max(1, Math.round(ms / DAY));
  return `the last wall was ${days} ${days === 1 ? 'day' : 'days'} ago`;
}
