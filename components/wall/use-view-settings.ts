'use client';

import { useState } from 'react';
import type { View } from '../../lib/views/view';
import { UP_CLOSE, type ViewingConditions } from '../../lib/views/viewing-conditions';
import type { Afar } from './view-controls';

/** The sun low on the left, where it rakes the face. */
const LOW_SUN = -70;

export interface ViewSettings {
  readonly view: View;
  readonly viewing: ViewingConditions;
  readonly distance: Afar;
  readonly sun: number;
  readonly stand: (distance: Afar) => void;
  readonly shine: (sun: number) => void;
  /** Moves the cut of a panel, or the course looked down on. */
  readonly move: (panel: string, to: number) => void;
}

/** How the reader settings: distance, light, and where each panel is cut or looked down on. Kept while other views are chosen. */
export function useViewSettings(viewKey: string, asked: View): ViewSettings {
  const [distance, stand] = useState<Afar>('six metres');
  const [sun, shine] = useState(LOW_SUN);
  const [places, setPlaces] = useState<Readonly<Record<string, number>>>({});
  const place = 'panel' in asked ? places[`${asked.kind} ${asked.panel}`] : undefined;
  return {
    view: place === undefined ? asked : placed(asked, place),
    viewing: conditionsBy(viewKey, distance, sun),
    distance,
    sun,
    stand,
    shine,
    move: (panel, to) => setPlaces((old) => ({ ...old, [`${asked.kind} ${panel}`]: to })),
  };
}

function placed(view: View, place: number): View {
  if (view.kind === 'side-section') return { ...view, x: place };
  return view.kind === 'above' ? { ...view, course: place } : view;
}

function conditionsBy(viewKey: string, distance: Afar, sun: number): ViewingConditions {
  if (viewKey === 'afar') return { distance, sun: null };
  return viewKey === 'side-light' ? { distance: 'near', sun } : UP_CLOSE;
}
