import type { EarlierEngine } from './engines';

export const { lay, layWithoutFaults, plannedFaults }: EarlierEngine;
