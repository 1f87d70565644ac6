/** @throws RangeError `<name>: <value> is not a finite number` */
export function refuseNotFinite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`${name}: ${value} is not a finite number`);
}

/** Zero belongs. @throws RangeError `<name>: <value> is negative` */
export function refuseNegative(name: string, value: number): void {
  refuseNotFinite(name, value);
  if (value < 0) throw new RangeError(`${name}: ${value} is negative`);
}

/** Zero does not belong. @throws RangeError `<name>: <value> is not above zero` */
export function refuseNotPositive(name: string, value: number): void {
  refuseNotFinite(name, value);
  if (value <= 0) throw new RangeError(`${name}: ${value} is not above zero`);
}

/** Whole numbers from 1 up. @throws RangeError `<name>: <value> is not a whole number` */
export function refuseNotCount(name: string, value: number): void {
  refuseNotPositive(name, value);
  if (!Number.isSafeInteger(value)) throw new RangeError(`${name}: ${value} is not a whole number`);
}
