/** What one may do at a call-out, before one goes to the wall and after; in the order in which it is shown. */
export const STREET_ACTS = ['go-near', 'shake', 'look', 'keep-away', 'pull', 'warn', 'prop'] as const;
export type StreetAct = (typeof STREET_ACTS)[number];

export const TODAY_ACTS = [
  'file',
  'fill',
  'engineer',
  'fix-back',
  'closed',
  'leave',
  'owner',
  'authority',
] as const;
export type TodayAct = (typeof TODAY_ACTS)[number];

/** Nobody does these at a wall that is failing, whatever the order: common practice, as in lib/inspect/make-safe. */
export const NEVER: readonly (StreetAct | TodayAct)[] = [
  'shake',
  'pull',
  'prop',
  'fill',
  'fix-back',
  'leave',
];

/** What comes before what: first the place is made safe, then one looks from outside it, then one goes to the wall. */
const ORDER: readonly (readonly [first: StreetAct, then: StreetAct])[] = [
  ['keep-away', 'go-near'],
  ['look', 'go-near'],
];

/** The pairs of acts that came in the wrong order; what was left out altogether came too late too. */
export function wrongOrders(done: readonly StreetAct[]): readonly (readonly [StreetAct, StreetAct])[] {
  return ORDER.filter(([first, then]) => {
    const [at, before] = [done.indexOf(then), done.indexOf(first)];
    return at >= 0 && (before < 0 || before > at);
  });
}

/** What a wall asks for today: where something may come down, all of it, and the ground stays closed; where it has cracked or moved, an engineer. */
export function neededToday(wall: {
  readonly mayFall: boolean;
  readonly hasMoved: boolean;
}): readonly TodayAct[] {
  if (wall.mayFall) return ['closed', 'owner', 'engineer', 'authority'];
  return wall.hasMoved ? ['owner', 'engineer'] : ['owner'];
}
