import { findJoints } from '../../lib/photo/find';
import { measureJoints } from '../../lib/photo/measure';
import { PhotoError } from '../../lib/photo/photo-error';
import type { Picture } from '../../lib/photo/picture';
import type { Answer, Asked } from './use-measuring';

let picture: Picture | null = null;

/** Finds and measures away from the page, which stays quick. The picture comes once and goes no further. */
self.onmessage = ({ data }: MessageEvent<Asked>) => {
  if (data.kind === 'picture') {
    picture = data.picture;
    return;
  }
  if (picture !== null) self.postMessage(answerTo(picture, data));
};

function answerTo(seen: Picture, asked: Exclude<Asked, { kind: 'picture' }>): Answer {
  const { turn } = asked;
  try {
    const found = asked.kind === 'find' ? findJoints(seen, asked.reference) : asked;
    return { turn, measured: measureJoints(seen, found.reference, found.joints, asked.known) };
  } catch (error) {
    if (!(error instanceof PhotoError)) throw error;
    return { turn, problem: error.message };
  }
}
