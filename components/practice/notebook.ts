import type { Reading } from '../../lib/instruments/reading';

/** A reading as it stands in the notebook beside the wall. */
export type NotedReading = Reading;
