import { Caution } from '../ui/caution';

const LINES = [
  'Your local code and the authority having jurisdiction decide. Codes are changed from place to place and from year to year.',
  'These figures were copied by hand from public texts. Look them up before you build.',
  'A drawing on this site is not a judgement of a real wall.',
] as const;

export function LimitsCaution() {
  return <Caution word="Local code decides" lines={LINES} toSafety />;
}
