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
};

export function DrawingByName({ name }: { readonly name: DrawingName }) {
  const Drawing = BY_NAME[name];
  return <Drawing />;
}
