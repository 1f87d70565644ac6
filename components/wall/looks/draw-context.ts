'use client';

import { createContext } from 'react';
import type { Drawing } from '../../../lib/drawing/shape';
import { type Draw, drawFront } from '../../../lib/views/front/draw-front';
import type { AskedOfSite } from '../../asked/asked-of-site';

/** What draws the walls below it, this device or the site: here the front alone, unless a page hands down more. */
export const DrawContext = createContext<Draw | AskedOfSite<Drawing>>(drawFront);
