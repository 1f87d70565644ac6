import { drawingOf } from '../../../lib/views/draw-view';
import { quickPicture } from './quick-picture';

/** What lays, measures and draws the pictures of a round: fetched at the reader's first interaction. */
export const QUICK_PART = { quickPicture, drawingOf };
export type QuickPart = typeof QUICK_PART;
