import type { InstrumentId } from '../../lib/instruments/instrument';
import { KitDrawing } from '../drawing/kit-drawing';
import styles from './picture.module.css';
import type { Drawn, Shown } from './picture-parts';
import { jointGaugePicture, tapePicture } from './pictures-of-length';
import { levelPicture, linePicture, plumbPicture, squarePicture } from './pictures-of-line';
import {
  mirrorPicture,
  probePicture,
  scratchPicture,
  tapPicture,
  thermometerPicture,
  tieFinderPicture,
} from './pictures-of-senses';
import { feelerPicture, rodPicture } from './pictures-of-steps';

const PICTURES: Readonly<Record<InstrumentId, (shown: Shown) => Drawn>> = {
  tape: tapePicture,
  'joint-gauge': jointGaugePicture,
  'spirit-level': levelPicture,
  'plumb-line': plumbPicture,
  'mason-line': linePicture,
  straightedge: feelerPicture,
  square: squarePicture,
  'gauge-rod': rodPicture,
  mirror: mirrorPicture,
  probe: probePicture,
  'tie-finder': tieFinderPicture,
  tap: tapPicture,
  scratch: scratchPicture,
  thermometer: thermometerPicture,
};
const SHEET = { x: 0, y: 0, width: 320, height: 120 };

/** An instrument drawn on its reading, which stands beside it in words. Small steps are drawn larger than they are. */
export function InstrumentPicture({ instrument, ...shown }: Shown & { readonly instrument: InstrumentId }) {
  return <KitDrawing box={SHEET} className={styles.picture} {...PICTURES[instrument](shown)} />;
}
