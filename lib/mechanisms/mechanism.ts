import type { Season } from '../failing/state/model';
import type { Chance } from '../generate/chance';
import type { PanelSurvey, Survey } from '../wall/survey';
import type { Draft } from './draft';

/** Where and when a mechanism acts, and the chance that settles its parameters. */
export interface Site {
  readonly survey: Survey;
  /** The longest panel. */
  readonly main: PanelSurvey;
  readonly draft: Draft;
  readonly chance: Chance;
  readonly years: number;
  readonly season: Season;
}

/** Something that works on a wall over the years. */
export interface Mechanism {
  /** As it is typed: `corner-settlement`. */
  readonly name: string;
  /** One sentence: what happens. */
  readonly what: string;
  /** Years before its signs can be seen on every wall it fits. */
  readonly showsAfter: number;
  /** What a wall must have for it, "a wall with a lintel"; null where this one has it. */
  readonly lacks: (survey: Survey, main: PanelSurvey) => string | null;
  readonly act: (site: Site) => void;
}

/** How much of what is to come has come after so many years: half after `half`. Ours: it starts fast and slows. */
export function shareAfter(years: number, half: number): number {
  return years / (years + half);
}

/** A number from `least` to `most`, in hundredths of the way. */
export function between(chance: Chance, least: number, most: number): number {
  return least + ((most - least) * chance.whole(0, 100)) / 100;
}

/** Anchored walls stand on something; adhered ones hang on their backing. */
export function mustStand({ wall }: Survey): string | null {
  return wall.masonry === 'anchored' ? null : 'a wall that stands on a ledge';
}
