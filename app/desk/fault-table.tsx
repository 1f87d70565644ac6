import { confusionOf } from '../../lib/classes/statistics/confusion';
import { type FamilyRates, familyRates } from '../../lib/classes/statistics/family-rates';
import type { WallAnswer } from '../../lib/classes/statistics/wall-answer';
import { TOPIC_TITLES, TOPICS, topicOf } from '../../lib/generate/topics';
import { faultName } from '../../lib/wall-page/fault-choices';
import { percentText, shareText } from './book-numbers';
import styles from './mark-book.module.css';
import { SharePlot } from './plots/share-plot';
import { Head, SheetTable } from './sheet-table';

/** Fault by fault, under its family: how often found, called by name, taken for something else, and marked where it was not. */
export function FaultTable({
  answers,
  caption,
}: {
  readonly answers: readonly WallAnswer[];
  readonly caption: string;
}) {
  const rates = familyRates(answers);
  const { rows } = confusionOf(answers);
  const takenFor = new Map(
    rows.map(({ fault, named }) => [
      fault,
      [...named].filter(([name]) => name !== fault).sort(([, a], [, b]) => b - a),
    ]),
  );
  if (rates.length === 0) return <p>No fault was met or marked yet.</p>;
  return (
    <SheetTable
      caption={caption}
      head={
        <>
          <Head>Fault</Head>
          <Head>Found</Head>
          <th scope="col" className={styles.drawn}>
            <span className="visually-hidden">The share found, drawn</span>
          </th>
          <Head>Found and named</Head>
          <Head>Named as</Head>
          <Head>False marks</Head>
        </>
      }
    >
      {familiesOf(rates).map(({ title, own }) => (
        <tbody key={title}>
          <tr className={styles.family}>
            <th scope="rowgroup" colSpan={6}>
              {title}
            </th>
          </tr>
          {own.map((rate) => (
            <FaultRow key={rate.fault} rate={rate} takenFor={takenFor.get(rate.fault) ?? []} />
          ))}
        </tbody>
      ))}
    </SheetTable>
  );
}

function FaultRow({
  rate: { fault, hit, nameRight, met, found, named, wallsFalse, wallsWithout, falseAlarm },
  takenFor,
}: {
  readonly rate: FamilyRates;
  readonly takenFor: readonly (readonly [string, number])[];
}) {
  return (
    <tr>
      <th scope="row">{faultName(fault)}</th>
      <td>{hit ? shareText(found, met, hit) : 'not met'}</td>
      <td className={styles.drawn}>{hit && <SharePlot limits={hit} />}</td>
      <td>{nameRight ? `${named} of ${met}, ${percentText(nameRight.share)} %` : '–'}</td>
      <td>{takenFor.map(([name, count]) => `${faultName(name)} (${count})`).join(', ') || '–'}</td>
      <td>{falseAlarm ? shareText(wallsFalse, wallsWithout, falseAlarm) : '–'}</td>
    </tr>
  );
}

/** In the order of the lessons; a fault of two topics stands with the first. */
function familiesOf(rates: readonly FamilyRates[]) {
  return TOPICS.map((topic) => ({
    title: TOPIC_TITLES[topic],
    own: rates.filter(({ fault }) => topicOf(fault) === topic),
  })).filter(({ own }) => own.length > 0);
}
