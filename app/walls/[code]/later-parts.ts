import { loadViews } from '../use-later-views';

/** What a practice page fetches once it stands: each part apart, when it is wanted. */
export const loadSecond = () => import('./second-part').then(({ SECOND_PART }) => SECOND_PART);
export const loadResult = () => import('./result-part').then(({ RESULT_PART }) => RESULT_PART);
/** The key and the marking: not for set work. */
export const loadMarker = () => import('./marker-part').then(({ MARKER_PART }) => MARKER_PART);

/** Fetches ahead all that reading a wall of set work takes, so that it can be read without a network. */
export async function fetchForReading(): Promise<void> {
  await Promise.all([loadSecond(), loadViews()]);
}
