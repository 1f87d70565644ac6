import type { Finding } from '../../lib/inspect/finding';
import type { LengthSystem } from '../../lib/units';
import { formatMeasure, isFine, measureInBoth } from './format-measure';

/** A bed that is held against the mean of eight: the figure is no thickness, but how far the bed is off that mean. */
export function offTheMean({ source }: Pick<Finding, 'source'>): boolean {
  return source.limit === 'bed-from-mean-of-eight';
}

/** What was measured of a finding, and from where: "12 mm"; "7.6 mm thinner than the mean of eight beds". */
export function measuredWords(finding: Finding, system: LengthSystem): string {
  const { measured, unit, limit } = finding;
  return fromWhere(finding, formatMeasure(measured, unit, system, isFine(limit, unit)));
}

/** The same in both lengths, for paper. */
export function measuredInBoth(finding: Finding): string {
  const { measured, unit, limit } = finding;
  return fromWhere(finding, measureInBoth(measured, unit, isFine(limit, unit)));
}

function fromWhere(finding: Finding, words: string): string {
  if (!offTheMean(finding)) return words;
  return `${words} ${finding.check === 'thin-joint' ? 'thinner' : 'thicker'} than the mean of eight beds`;
}
