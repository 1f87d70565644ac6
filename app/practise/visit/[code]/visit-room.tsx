'use client';

import { useMemo } from 'react';
import type { CalledWall } from '../../../../lib/visit/visit-wall';
import { LoadingNotice } from '../../../walls/loading-notice';
import { useLazy } from '../../../walls/use-lazy';
import { VisitStages } from './visit-stages';

const loadVisit = () => import('../../../../lib/visit/open-visit').then(({ openVisit }) => openVisit);

/** What the years have done to the wall is worked out in the browser, by what is fetched apart. */
export function VisitRoom(props: {
  readonly called: CalledWall;
  readonly code: string;
  readonly next: string;
}) {
  const { called, code, next } = props;
  const opening = useLazy(loadVisit, true);
  const visit = useMemo(() => opening.loaded?.(called), [opening.loaded, called]);
  if (visit === undefined) return <LoadingNotice of={[opening]} />;
  return <VisitStages {...{ visit, code, next }} />;
}
