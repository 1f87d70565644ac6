'use client';

import { useMemo } from 'react';
import type { FaceBox } from '../../../lib/geometry/box';
import type { LengthSystem } from '../../../lib/units';
import { croppedTo } from '../../../lib/views/front/cropped';
import type { Draw } from '../../../lib/views/front/draw-front';
import type { FindingDimension } from '../../../lib/views/pointing/finding-dimension';
import type { View } from '../../../lib/views/view';
import type { SurveyedWall } from '../../../lib/wall/surveyed';
import { DrawContext } from '../../wall/looks/draw-context';
import { WallDrawing } from '../../wall/wall-drawing';
import type { DrawnMark } from '../../wall/wall-drawing-props';

const NONE: readonly DrawnMark[] = [];

/** A picture of a round: one look at one place of a wall. */
export function QuickDrawing(props: {
  readonly draw: Draw;
  readonly surveyed: SurveyedWall;
  readonly view: View;
  readonly window: FaceBox | null;
  readonly system: LengthSystem;
  readonly label: string;
  readonly marks?: readonly DrawnMark[];
  readonly dimensions?: readonly FindingDimension[];
}) {
  const { draw, surveyed, view, window, system, label, marks = NONE, dimensions } = props;
  const drawIt = useMemo<Draw>(
    () => (window === null ? draw : (...wanted: Parameters<Draw>) => croppedTo(draw(...wanted), window)),
    [draw, window],
  );
  return (
    <DrawContext value={drawIt}>
      <WallDrawing
        surveyed={surveyed}
        view={view}
        marks={marks}
        {...(dimensions ? { dimensions } : {})}
        selected={null}
        layer={view.kind === 'before-cover' ? 'fixings' : 'units'}
        system={system}
        label={label}
      />
    </DrawContext>
  );
}
