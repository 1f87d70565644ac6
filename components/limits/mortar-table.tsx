import type { MortarRow } from '../../lib/limits/limit';
import { ColumnHeads } from '../ui/column-heads';
import { keepTogether } from './limit-words';
import { TableFrame } from './table-frame';

/** Mortar types by volume. Mixes of one type stand together. */
export function MortarTable({ rows, name }: { readonly rows: readonly MortarRow[]; readonly name: string }) {
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
