import { formatFineLength } from '../../lib/limits/format-amount';
import type { Bound, MortarRow } from '../../lib/limits/limit';
import type { LengthSystem } from '../../lib/units';
import { ColumnHeads } from '../ui/column-heads';
import styles from './limit-tables.module.css';
import { keepTogether } from './limit-words';
import { TableFrame } from './table-frame';

type Form<F extends Bound['form']> = Extract<Bound, { form: F }>;

/** A limit that is a table, as a table; nothing for other limits. `name` says what it is a table of. */
export function LimitTable(props: {
  readonly bound: Bound;
  readonly name: string;
  readonly first: LengthSystem;
}) {
  const { bound, name, first } = props;
  switch (bound.form) {
    case 'angle-table':
      return <AngleTable bound={bound} name={name} first={first} />;
    case 'tie-rows':
      return <TieTable bound={bound} name={name} first={first} />;
    case 'mortar-table':
      return <MortarTable rows={bound.rows} name={name} />;
    default:
      return null;
  }
}

function AngleTable({
  bound,
  name,
  first,
}: {
  bound: Form<'angle-table'>;
  name: string;
  first: LengthSystem;
}) {
  const cases = [...new Set(bound.rows.flatMap(({ spans }) => Object.keys(spans)))];
  return (
    <TableFrame name={name}>
      <thead>
        <tr>
          <th scope="col" rowSpan={2}>
            Angle: legs and thickness, {first}
          </th>
          <th scope="colgroup" className={styles.over} colSpan={cases.length}>
            Longest clear span, {bound.caseBy === 'unit depth' ? 'by what it carries' : 'by storeys above'}
          </th>
        </tr>
        <tr>
          {cases.map((key) => (
            <th key={key} scope="col">
              {caseWords(key, bound.caseBy)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {bound.rows.map(({ vertical, horizontal, thickness, spans }) => {
          const legs = [vertical, horizontal, thickness];
          return (
            <tr key={legs.join()}>
              <th scope="row">
                <span className={styles.first}>{withoutUnit(joined(legs, first))}</span>
                <span className={styles.second}>{keepTogether(joined(legs, other(first)))}</span>
              </th>
              {cases.map((key) => (
                <td key={key}>
                  {spans[key] === undefined ? (
                    'not allowed'
                  ) : (
                    <Lengths lengths={[spans[key]]} first={first} />
                  )}
                </td>
              ))}
            </tr>
          );
        })}
      </tbody>
    </TableFrame>
  );
}

function TieTable({ bound, name, first }: { bound: Form<'tie-rows'>; name: string; first: LengthSystem }) {
  return (
    <TableFrame name={name}>
      <ColumnHeads of={['Up the wall, at most', 'Across it, at most']} />
      <tbody>
        {bound.rows.map(({ vertical, horizontal }) => (
          <tr key={vertical}>
            <td>
              <Lengths lengths={[vertical]} first={first} />
            </td>
            <td>
              <Lengths lengths={[horizontal]} first={first} />
            </td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

/** Lengths of one thing in both systems, the printed one first. */
function Lengths({ lengths, first }: { readonly lengths: readonly number[]; readonly first: LengthSystem }) {
  return (
    <>
      <span className={styles.first}>{keepTogether(joined(lengths, first))}</span>
      <span className={styles.second}>{keepTogether(joined(lengths, other(first)))}</span>
    </>
  );
}

function other(system: LengthSystem): LengthSystem {
  return system === 'mm' ? 'inches' : 'mm';
}

/** For a column whose head names the unit. */
function withoutUnit(text: string): string {
  return text.replace(/ (mm|in)$/, '');
}

/** 89 × 89 × 6.4 mm: the unit once. */
function joined(lengths: readonly number[], system: LengthSystem): string {
  const texts = lengths.map((length) => formatFineLength(length, system));
  const unit = system === 'mm' ? ' mm' : ' in';
  return texts.map((text, index) => (index < texts.length - 1 ? text.replace(unit, '') : text)).join(' × ');
}

const STOREYS: Readonly<Record<string, string>> = { '0': 'none', '1': 'one', '2': 'two' };

function caseWords(key: string, by: Form<'angle-table'>['caseBy']): string {
  if (by === 'storeys above') return STOREYS[key] ?? key;
  if (!/^\d+$/.test(key)) return key;
  return key === '100' ? '100 mm stone' : `${key} mm brick`;
}

/** Mortar types by volume. Mixes of one type stand together. */
function MortarTable({ rows, name }: { readonly rows: readonly MortarRow[]; readonly name: string }) {
  return (
    <TableFrame name={name}>
      <ColumnHeads of={['Type', 'Portland cement', 'Other cement', 'Lime', 'Sand']} />
      <tbody>
        {rows.map(({ type, portland, lime, masonryCement, masonryCementVolume, sand }) => (
          <tr key={[type, portland, masonryCement, lime[1]].join()}>
            <th scope="row">{type}</th>
            <td>{portland === 0 ? '–' : fraction(portland)}</td>
            <td>{masonryCement === null ? '–' : `${masonryCementVolume} ${masonryCement}`}</td>
            <td>{lime[1] === 0 ? '–' : keepTogether(range(lime))}</td>
            <td>{keepTogether(range(sand))}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

function range([least, most]: readonly [number, number]): string {
  return least === most ? fraction(most) : `${fraction(least)} to ${fraction(most)}`;
}

const QUARTERS = ['', '1/4', '1/2', '3/4'] as const;

/** 2.25 to "2 1/4"; other decimals stay decimals. */
function fraction(value: number): string {
  const whole = Math.floor(value);
  const quarter = QUARTERS[(value - whole) * 4];
  if (quarter === undefined) return String(Number(value.toFixed(2)));
  return [whole === 0 && quarter !== '' ? '' : String(whole), quarter]
    .filter((text) => text !== '')
    .join(' ');
}
