import type { QuickRoundName } from './quick-picture';

/** Where a round is. The easy round from in front is not named in the address: rounds had no names at first. */
export function roundAddress({ rules, round, look, level }: QuickRoundName): string {
  const sort = `${look === 'face' ? '' : `&look=${look}`}${level === 1 ? '' : `&level=${level}`}`;
  return `/practise/quick?rules=${rules}&round=${round}${sort}`;
}
