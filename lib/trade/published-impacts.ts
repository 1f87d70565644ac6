/** An energy somebody measured or tests with, joules. None of them is a safe one: people differ, and so does where it lands. */
export interface PublishedImpact {
  readonly energy: number;
  readonly what: string;
  readonly source: string;
}

/** In rising order of energy. Read in abstracts and in tables of the standards, not in the standards themselves. */
export const PUBLISHED_IMPACTS: readonly PublishedImpact[] = [
  {
    energy: 14.1,
    what: 'lowest energy at which one of 12 skulls failed in a laboratory',
    source: 'Yoganandan and others, Journal of Neurotrauma 12(4), 1995, abstract',
  },
  {
    energy: 28,
    what: 'mean energy of skull failure at 7 to 8 m/s',
    source: 'Yoganandan and others, Journal of Neurotrauma 12(4), 1995, abstract',
  },
  {
    energy: 32.6,
    what: '332 g from 10 m: severe concussion possible under a helmet',
    source: 'Horak and others, Legal Medicine, 2024, abstract',
  },
  {
    energy: 49,
    what: 'helmet test of EN 397: 5 kg from 1 m',
    source: 'EN 397, as a maker’s table of standards gives it',
  },
  {
    energy: 54.45,
    what: 'helmet test of ANSI/ISEA Z89.1: 3.6 kg at 5.5 m/s',
    source: 'ANSI/ISEA Z89.1, as a maker’s table of standards gives it',
  },
  {
    energy: 68.5,
    what: 'highest energy at which one of those 12 skulls failed',
    source: 'Yoganandan and others, Journal of Neurotrauma 12(4), 1995, abstract',
  },
];
