import { memo } from 'react';
import { svgBox } from '../../lib/drawing/svg-nodes';
import type { Box } from '../../lib/geometry/box';
import type { ViewingConditions } from '../../lib/views/viewing-conditions';
import styles from './wall-drawing.module.css';

/** What distance and low sun do to the whole wall: the air pales it, the sun warms the side it comes from and leaves the other dark. */
export const LightOver = memo(function LightOver(props: {
  readonly box: Box;
  readonly viewing: ViewingConditions;
  readonly prefix: string;
}) {
  const { box, viewing, prefix } = props;
  const { distance, sun } = viewing;
  if (distance === 'near' && sun === null) return null;
  const [x, y, width, height] = svgBox(box);
  const over = { x, y, width, height, className: styles.light };
  if (sun === null)
    return <rect {...over} fill="#dfe6e8" fillOpacity={distance === 'ten metres' ? 0.4 : 0.3} />;
  const [from, to] = sun <= 0 ? ['0', '1'] : ['1', '0'];
  return (
    <>
      <linearGradient id={`${prefix}sun`} x1={from} x2={to} y1="0" y2="0">
        <stop offset="0" stopColor="#ffc76b" stopOpacity="0.3" />
        <stop offset="0.35" stopColor="#7a4a14" stopOpacity="0.22" />
        <stop offset="1" stopColor="#140d05" stopOpacity="0.55" />
      </linearGradient>
      <rect {...over} fill={`url(#${prefix}sun)`} />
    </>
  );
});
