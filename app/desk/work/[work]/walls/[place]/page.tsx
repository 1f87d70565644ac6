import type { Metadata } from 'next';
import { resultOf } from '../../../../../../lib/store/attempts';
import { workHead } from '../../../../../../lib/store/book/book-heads';
import { handInsOnWall } from '../../../../../../lib/store/hand-in-record';
import { faultName } from '../../../../../../lib/wall-page/fault-choices';
import { requirePage } from '../../../../../access/require-page';
import { percentText, times } from '../../../../book-numbers';
import { LearnerWall } from '../../../../learner-wall';
import { LetteredKey } from '../../../../lettered-key';
import styles from '../../../../mark-book.module.css';
import { codesOf, type OpenPlace, openPlace } from '../../../../open-place';
import { HeatWall } from '../../../../plots/heat-wall';
import { Head, SheetTable } from '../../../../sheet-table';

export const metadata: Metadata = { title: 'Where the group marked' };

interface Props {
  readonly params: Promise<{ readonly work: string; readonly place: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

export default async function PlacePage({ params, searchParams }: Props) {
  const { params: named, store } = await requirePage('/desk/work/[work]/walls/[place]', params);
  const { work = '' } = named;
  const place = /^\d{1,2}$/.test(named.place ?? '') ? Number(named.place) : 1;
  const [head, handIns] = await Promise.all([workHead(store.db, work), handInsOnWall(store.db, work, place)]);
  const codes = codesOf(handIns);
  const asked = await searchParams;
  // Only a hand-in of this very work is looked at.
  const one = handIns.find(({ attempt }) => attempt === asked.attempt);
  const code = one?.code ?? codes.find((each) => each === asked.code) ?? codes[0];
  const open = code === undefined ? null : openPlace(code, handIns);
  const result = one ? (await resultOf(store, one.attempt))?.results[place - 1] : undefined;
  const here = `/desk/work/${work}/walls/${place}`;
  const same = one ? `?attempt=${one.attempt}` : '';
  return (
    <div className={styles.wide}>
      <p className="links">
        <a href={`/desk/work/${work}/book`}>{head.title}: marks</a>
      </p>
      <h1>
        {head.title}, wall {place}: {one ? 'one hand-in' : 'where the group marked'}
      </h1>
      <ul className="links">
        {place > 1 && (
          <li>
            <a href={`/desk/work/${work}/walls/${place - 1}${same}`}>Wall {place - 1}</a>
          </li>
        )}
        {place < head.walls && (
          <li>
            <a href={`/desk/work/${work}/walls/${place + 1}${same}`}>Wall {place + 1}</a>
          </li>
        )}
        <li>
          <a href={`/desk/work/${work}/show?place=${place}`}>Show on a projector</a>
        </li>
        {one && (
          <>
            <li>
              <a href={here}>The whole group on this wall</a>
            </li>
            <li>
              <a href={`/desk/learners/${one.learner}`}>{one.name}</a>
            </li>
          </>
        )}
        {code && (
          <li>
            <a href={`/walls/${code}`}>Open the wall itself</a>
          </li>
        )}
      </ul>
      {code === undefined && <p>Nobody has handed this wall in yet.</p>}
      {code !== undefined && open === null && (
        <p>
          Wall {code} was laid by a newer version of the site. This one cannot draw it, so there is no map of
          it.
        </p>
      )}
      {open !== null && one && result !== undefined && (
        <LearnerWall name={one.name} surveyed={open} rules={open.rules} result={result} />
      )}
      {open !== null && !one && (
        <>
          {codes.length > 1 && <CodeLinks here={here} codes={codes} handIns={handIns} shown={open.code} />}
          <p>
            {times(open.handIns.length, 'hand-in')} of wall {open.code}.{' '}
            {open.handIns.filter(({ saysSound }) => saysSound).length} said it is sound. A darker box: more of
            them marked it; the number says how many. A dashed ring with a letter: a fault that is there.
          </p>
          <HeatWall
            surveyed={open}
            heat={open.heat}
            findings={open.findings}
            label={`Wall ${open.code} with the marks of ${times(open.handIns.length, 'hand-in')}. The tables below say the same.`}
          />
          <LetteredKey findings={open.findings} nameOf={open.nameOf} />
          <HeatTable open={open} />
        </>
      )}
    </div>
  );
}

function CodeLinks({
  here,
  codes,
  handIns,
  shown,
}: {
  readonly here: string;
  readonly codes: readonly string[];
  readonly handIns: readonly { readonly code: string; readonly name: string }[];
  readonly shown: string;
}) {
  return (
    <nav aria-label="Whose wall">
      <p>Not all had the same wall here. Choose whose:</p>
      <ul className="links">
        {codes.map((code) => (
          <li key={code}>
            <a href={`${here}?code=${code}`} aria-current={code === shown ? 'true' : undefined}>
              {handIns
                .filter((handIn) => handIn.code === code)
                .map(({ name }) => name)
                .join(', ')}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** The map in words: each marked part, by how many, and what they called it. */
function HeatTable({ open: { heat, thereAt, nameOf, handIns } }: { readonly open: OpenPlace }) {
  if (heat.length === 0) return <p>Nobody marked anything on this wall.</p>;
  const learners = new Set(handIns.map(({ learner }) => learner)).size;
  return (
    <SheetTable
      caption="Marked parts, the most marked first"
      head={
        <>
          <Head>Part</Head>
          <Head number>Learners</Head>
          <Head>Called</Head>
          <Head>In the key</Head>
        </>
      }
    >
      <tbody>
        {heat.map(({ part, learners: count, share, names }) => {
          const there = thereAt(part).map(({ check }) => faultName(check));
          return (
            <tr key={part}>
              <th scope="row">{nameOf(part)}</th>
              <td className={styles.number}>
                {count} of {learners} ({percentText(share)} %)
              </td>
              <td>{names.map(([fault, times]) => `${faultName(fault)} (${times})`).join(', ')}</td>
              <td>{there.join(', ') || 'nothing'}</td>
            </tr>
          );
        })}
      </tbody>
    </SheetTable>
  );
}
