import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { QrCode } from '../../../../../components/desk/qr-code';
import { PrintButton } from '../../../../../components/ui/print-button';
import { TicketLines } from '../../../../../components/wall-page/ticket-lines';
import { ruleSetTitle } from '../../../../../lib/limits/limits';
import { groupOf } from '../../../../../lib/store/groups/groups';
import { rosterOf } from '../../../../../lib/store/learners';
import { workOf } from '../../../../../lib/store/set-work';
import { viewsOnPaper } from '../../../../../lib/views/parse-view';
import { requirePage } from '../../../../access/require-page';
import { qrPath } from '../../../../accounts/qr-path';
import { siteAddress } from '../../../../request/address';
import { KeyList } from '../../../../set-work/key-list';
import { firstForm } from '../../../../set-work/lay-forms';
import { type PreviewWall, previewOf } from '../../../../set-work/preview';
import styles from './print.module.css';

export const metadata: Metadata = { title: 'Print set work' };

/** Lines to write on for each wall. */
const LINES = [1, 2, 3, 4, 5];

interface Props {
  readonly params: Promise<{ readonly work: string }>;
  readonly searchParams: Promise<{ readonly learner?: string }>;
}

export default async function PrintPage({ params, searchParams }: Props) {
  const {
    params: { work: id = '' },
    store,
  } = await requirePage('/desk/work/[work]/print', params);
  const { learner: asked } = await searchParams;
  const work = await workOf(store, id);
  const { joinCode } = await groupOf(store, work.groupId);
  const roster = work.spec.sameForAll ? [] : await rosterOf(store.db, work.groupId);
  const learner = roster.find((each) => each.id === asked) ?? roster[0] ?? null;
  const walls = previewOf(await firstForm(store, work, learner?.id ?? null));
  const address = `${siteAddress(await headers())}/my-work/${id}`;
  const whose = learner ? `&learner=${learner.id}` : '';
  return (
    <div className={styles.sheets}>
      <div className={styles.notPrinted}>
        <p>
          <a href={`/desk/work/${id}`}>Back to {work.title}</a>
        </p>
        <p>
          Question sheets first, then the key on a sheet of its own. Keep the last one. It fits A4 and Letter,
          in black and white.
        </p>
        {roster.length > 0 && (
          <ul className="links">
            {roster.map(({ id: each, name }) => (
              <li key={each}>
                <a
                  href={`/desk/work/${id}/print?learner=${each}`}
                  aria-current={each === learner?.id ? 'page' : undefined}
                >
                  {name}
                </a>
              </li>
            ))}
          </ul>
        )}
        <PrintButton />
      </div>
      <header className={styles.head}>
        <div>
          <h1>{work.title}</h1>
          <p>Name: {learner ? <strong>{learner.name}</strong> : <span className={styles.blank} />}</p>
          <p>
            Look at each wall. Write down what is out of its limits, and where. A wall may be sound: then
            write “sound”. Checked against {ruleSetTitle(work.spec.rules)}.
          </p>
          <p className={styles.small}>
            Hand in on a phone: scan the code, or go to {address}. If it asks for your group, type {joinCode}.
          </p>
        </div>
        <QrCode qr={qrPath(address)} label="QR code to hand in" />
      </header>
      {walls.map((wall) => (
        <QuestionSheet key={wall.place} work={id} wall={wall} whose={whose} of={walls.length} />
      ))}
      <section className={styles.key}>
        <h1>Key: {work.title}</h1>
        <p>
          {learner ? `Walls of ${learner.name}. ` : ''}Keep this sheet. Checked against{' '}
          {ruleSetTitle(work.spec.rules)}. Drawn walls for learning: local code, and the authority that
          applies it, decide on real ones.
        </p>
        <ol>
          {walls.map(({ place, code, kind, key }) => (
            <li key={place}>
              <h2>
                {kind} · code {code}
              </h2>
              <KeyList lines={key} />
            </li>
          ))}
        </ol>
      </section>
    </div>
  );
}

function QuestionSheet(props: {
  readonly work: string;
  readonly wall: PreviewWall;
  readonly whose: string;
  readonly of: number;
}) {
  const { work, wall, whose, of } = props;
  const { place, kind } = wall;
  return (
    <section className={styles.sheet}>
      <h2>
        Wall {place} of {of}: {kind}
      </h2>
      <div className={`row ${styles.views}`}>
        {viewsOnPaper(wall.wall).map(({ view, title }) => (
          <figure key={view} data-view={view === 'front' ? 'front' : 'other'}>
            {/* biome-ignore lint/performance/noImgElement: a drawing made for this page, which no image server can make smaller */}
            <img
              src={`/api/work/${work}/picture?place=${place}&view=${encodeURIComponent(view)}${whose}`}
              alt={`Wall ${place}: ${title}`}
            />
            <figcaption>{title}</figcaption>
          </figure>
        ))}
      </div>
      {wall.wall.batches.length > 0 && <TicketLines batches={wall.wall.batches} />}
      {wall.wall.masonry === 'adhered' && (
        <p>The backs of these units can only be seen on a screen: lift units there, then write here.</p>
      )}
      <table className={styles.answers}>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">What is wrong</th>
            <th scope="col">Measured</th>
            <th scope="col">What to do</th>
          </tr>
        </thead>
        <tbody>
          {LINES.map((line) => (
            <tr key={line}>
              <td />
              <td />
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
