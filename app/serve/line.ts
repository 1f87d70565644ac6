/** Those who wait in front: people who have begun and want to see their wall; other people with work to do; then whoever wants to look at a wall. */
const RANKS = ['begun', 'work', 'look'] as const;
export type Rank = (typeof RANKS)[number];

export interface Line {
  /** Does the work when a seat is free; the work is told which. @throws LineFull at once. */
  readonly wait: <T>(rank: Rank, work: (seat: number) => Promise<T>) => Promise<T>;
}

/** Nobody more may wait. */
export class LineFull extends Error {
  override name = 'LineFull';
}

/** So many at a time, the others in line behind them: in each rank first come, first served, and at most so many. */
export function makeLine(seats: number, most: Readonly<Record<Rank, number>>): Line {
  const free = Array.from({ length: seats }, (_, seat) => seat);
  const waiting: Readonly<Record<Rank, ((seat: number) => void)[]>> = { begun: [], work: [], look: [] };

  const seatFor = (rank: Rank) => {
    const seat = free.shift();
    if (seat !== undefined) return Promise.resolve(seat);
    if (waiting[rank].length >= most[rank]) throw new LineFull(`${most[rank]} wait already`);
    return new Promise<number>((called) => {
      waiting[rank].push(called);
    });
  };

  const leave = (seat: number) => {
    const rank = RANKS.find((each) => waiting[each].length > 0);
    const next = rank && waiting[rank].shift();
    if (next) next(seat);
    else free.push(seat);
  };

  return {
    wait: async (rank, work) => {
      const seat = await seatFor(rank);
      try {
        return await work(seat);
      } finally {
        leave(seat);
      }
    },
  };
}
