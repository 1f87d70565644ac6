import type { Part } from '../wall/parts';
import type { PanelSurvey, Survey } from '../wall/survey';

/** What an instrument reads off: the place it is held to, the panel that is on, and the whole wall. */
export interface Place {
  readonly part: Part;
  readonly panel: PanelSurvey;
  readonly survey: Survey;
  readonly lifted: boolean;
}
