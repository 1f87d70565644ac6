'use client';

import { useMemo } from 'react';
import { parseCode } from '../../../lib/generate/wall-code';
import { layPractice } from '../lay-practice';
import { PracticeRoom } from './practice-room';
import type { SetWork } from './set-work';

/** The practice on the wall of a code, laid here in the browser: for pages that have no more than the code. */
export function Practice(props: {
  readonly code: string;
  readonly label: string;
  readonly setWork?: SetWork;
}) {
  const laid = useMemo(() => layPractice(parseCode(props.code)), [props.code]);
  return <PracticeRoom {...props} laid={laid} />;
}
