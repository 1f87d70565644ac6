import { ResultView } from '../../../components/result/result-view';

/** What shows a result. Fetched when the reader looks once more, so that it is here at hand-in. */
export const RESULT_PART = { ResultView };
export type ResultPart = typeof RESULT_PART;
