import type { ReactNode } from 'react';
import type { InstrumentId } from '../../lib/instruments/instrument';
import type { Shown } from './picture-frame';
import { FeelerPicture, JointGaugePicture, RodPicture, TapePicture } from './pictures-of-length';
import { LevelPicture, LinePicture, PlumbPicture, SquarePicture } from './pictures-of-line';
import {
  MirrorPicture,
  ProbePicture,
  ScratchPicture,
  TapPicture,
  ThermometerPicture,
  TieFinderPicture,
} from './pictures-of-senses';

const PICTURES: Readonly<Record<InstrumentId, (shown: Shown) => ReactNode>> = {
  tape: TapePicture,
  'joint-gauge': JointGaugePicture,
  'spirit-level': LevelPicture,
  'plumb-line': PlumbPicture,
  'mason-line': LinePicture,
  straightedge: FeelerPicture,
  square: SquarePicture,
  'gauge-rod': RodPicture,
  mirror: MirrorPicture,
  probe: ProbePicture,
  'tie-finder': TieFinderPicture,
  tap: TapPicture,
  scratch: ScratchPicture,
  thermometer: ThermometerPicture,
};

/** An instrument drawn on its reading. Small steps are drawn larger than they are. */
export function InstrumentPicture({ instrument, ...shown }: Shown & { readonly instrument: InstrumentId }) {
  const Picture = PICTURES[instrument];
  return <Picture {...shown} />;
}
