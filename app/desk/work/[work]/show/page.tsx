import type { Metadata } from 'next';
import { workHead } from '../../../../../lib/store/book/book-heads';
import { codeAtPlace, handInsOnWall } from '../../../../../lib/store/hand-in-record';
import { requirePage } from '../../../../access/require-page';
import { LetteredKey } from '../../../lettered-key';
import styles from '../../../mark-book.module.css';
import { codesOf, openPlace } from '../../../open-place';
import { HeatWall } from '../../../plots/heat-wall';
import { Show } from './show';

export const metadata: Metadata = { title: 'Show' };

interface Props {
  readonly params: Promise<{ readonly work: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

/** One wall, large, for the whole room: the group's marks as they come, and the key when the instructor asks for it. */
export default async function ShowPage({ params, searchParams }: Props) {
  const { params: named, store } = await requirePage('/desk/work/[work]/show', params);
  const { work = '' } = named;
  const asked = await searchParams;
  const place = typeof asked.place === 'string' && /^\d{1,2}$/.test(asked.place) ? Number(asked.place) : 1;
  const [head, handIns] = await Promise.all([workHead(store.db, work), handInsOnWall(store.db, work, place)]);
  const code = codesOf(handIns)[0] ?? (await codeAtPlace(store.db, work, place));
  const open = code === undefined ? null : openPlace(code, handIns);
  const withKey = asked.key === 'yes';
  const here = `/desk/work/${work}/show`;
  if (open === null) {
    return (
      <div className={styles.wide}>
        <p className="links">
          <a href={`/desk/work/${work}/book`}>{head.title}: marks</a>
        </p>
        <h1>Nothing to show yet</h1>
        <p>
          {code === undefined
            ? 'The wall shows as soon as the first learner has opened this work.'
            : 'This wall was laid by a newer version of the site, and this one cannot draw it.'}
        </p>
      </div>
    );
  }
  return (
    <Show
      marksAt={`/api/book/marks/${work}/${place}?code=${open.code}`}
      first={{
        handedIn: new Set(open.handIns.map(({ learner }) => learner)).size,
        saysSound: open.handIns.filter(({ saysSound }) => saysSound).length,
      }}
      title={`${head.title}, wall ${place} of ${head.walls}`}
      places={{
        before: place > 1 ? `${here}?place=${place - 1}` : null,
        after: place < head.walls ? `${here}?place=${place + 1}` : null,
        key: withKey ? `${here}?place=${place}` : `${here}?place=${place}&key=yes`,
        back: `/desk/work/${work}/walls/${place}`,
      }}
      withKey={withKey}
      picture={
        <HeatWall
          surveyed={open}
          heat={open.heat}
          findings={withKey ? open.findings : []}
          label={`Wall ${open.code} with the marks of the group${withKey ? ' and the key' : ''}`}
        />
      }
      keyList={withKey ? <LetteredKey findings={open.findings} nameOf={open.nameOf} /> : null}
    />
  );
}
