import type { ResultRows } from '../../lib/wall-page/result-rows';

/** Said before the hand-in and after it. */
export const COULD_FALL_RULE =
  'The rule: while a fault that could make part of the wall fall is missed, the score stops at 50.';

/** The result in one or two sentences. */
export function scoreWords({
  findings,
  falseMarks,
  marked,
  answered,
}: Pick<ResultRows, 'findings' | 'falseMarks' | 'marked' | 'answered'>): string {
  const faults = findings.length;
  if (!answered) {
    const there = faults === 0 ? 'It is sound' : `It has ${faults === 1 ? 'a fault' : `${faults} faults`}`;
    return `You marked nothing on this wall and did not say that it is sound, so it is not answered and scores nothing. ${there}.`;
  }
  const hit = findings.filter(({ outcome }) => outcome === 'found' || outcome === 'wrong name').length;
  const beside = findings.filter(({ outcome }) => outcome === 'one joint off').length;
  const misnamed = findings.filter(({ outcome }) => outcome === 'wrong name').length;
  const wrong = falseMarks.length;
  if (faults === 0 && wrong === 0) return 'This wall is sound, and you said so.';
  if (faults === 0) return `This wall is sound. You marked ${places(wrong)} within the limits.`;
  if (marked === 0) {
    return `You said this wall is sound. It has ${faults === 1 ? 'a fault' : `${faults} faults`}.`;
  }
  const sentences = [
    hit === faults
      ? `You found ${faults === 1 ? 'the one fault' : `all ${faults} faults`} on this wall.`
      : hit > 0
        ? `You found ${hit} of ${faults} faults.`
        : faults === 1
          ? 'You did not find the one fault on this wall.'
          : `You found none of the ${faults} faults on this wall.`,
    beside > 0
      ? `${beside === 1 ? 'One mark was' : `${beside} marks were`} in the right place, one joint off.`
      : '',
    misnamed > 0 ? `${misnamed === 1 ? 'One has' : `${misnamed} have`} another name than you gave.` : '',
    wrong > 0 ? `You also marked ${places(wrong)} within the limits.` : '',
  ];
  return sentences.filter((sentence) => sentence !== '').join(' ');
}

/** 0.666 -> 67, out of a hundred. */
export function scoreOf100(score: number): number {
  return Math.round(score * 100);
}

function places(count: number): string {
  return count === 1 ? 'one place that is' : `${count} places that are`;
}
