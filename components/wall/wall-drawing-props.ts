import type { ReactNode } from 'react';
import type { LengthSystem } from '../../lib/units';
import type { FindingDimension } from '../../lib/views/pointing/finding-dimension';
import type { MarkBox } from '../../lib/views/pointing/mark-shapes';
import type { Aim } from '../../lib/views/pointing/pick';
import type { Layer } from '../../lib/views/pointing/targets';
import type { View } from '../../lib/views/view';
import type { ViewingConditions } from '../../lib/views/viewing-conditions';
import type { SurveyedWall } from '../../lib/wall/surveyed';

export interface DrawnMark extends MarkBox {
  readonly part: string;
}

export interface WallDrawingProps {
  readonly surveyed: SurveyedWall;
  readonly view: View;
  readonly marks: readonly DrawnMark[];
  readonly selected: string | null;
  /** What the keyboard moves over. A pointer picks of every layer. */
  readonly layer: Layer;
  /** A part was picked; by a pointer, with the place pointed at. */
  readonly onPick?: (part: string, aim: Aim | null) => void;
  readonly system: LengthSystem;
  readonly label: string;
  /** Distance and light; up close in daylight if left out. */
  readonly viewing?: ViewingConditions;
  /** What was measured, drawn where it was. */
  readonly dimensions?: readonly FindingDimension[];
  /** At first the wall fills the window, whatever its shape: a long one goes on past both sides. */
  readonly fills?: boolean;
  /** What is told on the drawing, by whether one has come near. */
  readonly note?: ((isNear: boolean) => ReactNode) | undefined;
  /** Units that were lifted: they are marked. */
  readonly lifted?: readonly string[];
  /** Taps mean units alone. */
  readonly unitsAlone?: boolean;
}
