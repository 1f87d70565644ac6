import { drawingOf } from '../../lib/views/draw-view';

/** What draws every look but the front. */
export const VIEWS_PART = { drawingOf };
export type ViewsPart = typeof VIEWS_PART;
