import { useId } from 'react';
import { parseNumber } from '../../lib/questions/parse-number';
import { inches, type LengthSystem, type Mm } from '../../lib/units';

/** A length as it is typed, in the reader's unit. */
export function LengthField(props: {
  readonly label: string;
  readonly typed: string;
  readonly system: LengthSystem;
  readonly onType: (typed: string) => void;
}) {
  const { label, typed, system, onType } = props;
  const id = useId();
  const isWrong = typed.trim() !== '' && lengthOf(typed, system) === undefined;
  return (
    <p>
      <label htmlFor={id}>
        {label}, in {system}
      </label>
      <br />
      <input
        id={id}
        type="text"
        inputMode={system === 'mm' ? 'decimal' : 'text'}
        autoComplete="off"
        size={10}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? `${id}-problem` : undefined}
        value={typed}
        onChange={({ target }) => onType(target.value)}
      />
      {isWrong && (
        <span id={`${id}-problem`} className="problem">
          {' '}
          Type a length over 0, such as {system === 'mm' ? '1200' : '47 1/4'}.
        </span>
      )}
    </p>
  );
}

const LONGEST: Mm = 100_000;

export function lengthOf(typed: string, system: LengthSystem): Mm | undefined {
  const number = parseNumber(typed, system === 'mm' ? 'mm' : 'in');
  if (number === undefined) return undefined;
  const mm = system === 'mm' ? number : inches(number);
  return mm > 0 && mm <= LONGEST ? mm : undefined;
}
