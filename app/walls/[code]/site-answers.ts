import { type AskedOfSite, askedOfSite } from '../../../components/asked/asked-of-site';
import { lookQuestion } from '../../../components/wall/looks/use-look';
import type { Drawing } from '../../../lib/drawing/shape';
import type { Reading } from '../../../lib/instruments/reading';
import { isRecord, readJson } from '../../../lib/json/read-json';
import { drawingOfLook, parseLook, type SentLook } from '../../../lib/site-drawn/sent-look';
import { UP_CLOSE } from '../../../lib/views/viewing-conditions';

/** What the site is asked of a wall that it draws. */
export interface SiteAnswers {
  readonly looks: AskedOfSite<Drawing>;
  /** Of a unit lifted the back can be read, too: what was read before it was lifted is then asked again. */
  readonly readings: (lifted: boolean) => AskedOfSite<readonly Reading[]>;
}

/** `address` is that of the wall; `first` the look from in front, that came with it. */
export function siteAnswers(address: string, first: SentLook): SiteAnswers {
  const front = drawingOfLook(first);
  const use = async (body: string): Promise<string> =>
    answerOf(
      await fetch(`${address}/uses`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body,
      }),
    );
  const read = (body: string) => use(body).then(readingsIn);
  const [standing, lifted] = [askedOfSite(read), askedOfSite(read)];
  return {
    looks: askedOfSite(
      async (question) => {
        const unit = /^behind:(.+)$/.exec(new URLSearchParams(question).get('view') ?? '')?.[1];
        if (unit !== undefined) await use(JSON.stringify({ used: 'lift', part: unit }));
        return parseLook(await answerOf(await fetch(`${address}/look?${question}`)));
      },
      // Nothing in it is written in one system or the other.
      new Map(
        (['mm', 'inches'] as const).map((system) => [
          lookQuestion({ kind: 'front' }, system, UP_CLOSE),
          front,
        ]),
      ),
    ),
    readings: (isLifted) => (isLifted ? lifted : standing),
  };
}

async function answerOf(answer: Response): Promise<string> {
  if (!answer.ok) throw new Error(`answered ${answer.status}`);
  return answer.text();
}

/** @throws TypeError for anything but the site's own answer. */
function readingsIn(text: string): readonly Reading[] {
  const loose = readJson(text);
  if (!isRecord(loose) || !Array.isArray(loose.readings))
    throw new TypeError('these are no readings of the site');
  return loose.readings;
}
