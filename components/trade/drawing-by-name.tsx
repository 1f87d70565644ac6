'use client';

import dynamic from 'next/dynamic';
import type { ComponentType } from 'react';
import type { DrawingName } from './drawings';

/** Each drawing is a piece of its own, fetched where it is shown. */
const BY_NAME: Readonly<Record<DrawingName, ComponentType>> = {
  'mortar-spread': dynamic(() => import('./mortar-spread').then((file) => file.MortarSpread)),
  'on-the-ledge': dynamic(() => import('./on-the-ledge').then((file) => file.OnTheLedge)),
  'string-line': dynamic(() => import('./string-line').then((file) => file.StringLine)),
  'gauge-rod': dynamic(() => import('./gauge-rod').then((file) => file.GaugeRod)),
  'tie-map': dynamic(() => import('./tie-map').then((file) => file.TieMap)),
  'mortar-box': dynamic(() => import('./mortar-box').then((file) => file.MortarBox)),
  lintel: dynamic(() => import('./lintel').then((file) => file.Lintel)),
  arch: dynamic(() => import('./arch').then((file) => file.Arch)),
  'set-out-a-course': dynamic(() => import('./set-out-course').then((file) => file.SetOutCourse)),
  'falling-brick': dynamic(() => import('./falling-brick').then((file) => file.FallingBrick)),
  corner: dynamic(() => import('./corner').then((file) => file.Corner)),
  'level-and-straightedge': dynamic(() => import('./level').then((file) => file.Level)),
};

export function DrawingByName({ name }: { readonly name: DrawingName }) {
  const Drawing = BY_NAME[name];
  return <Drawing />;
}
