'use client';

import { createContext } from 'react';
import { type Draw, drawFront } from '../../lib/views/front/draw-front';

/** What draws the walls below it: the front alone, unless a page hands down more. */
export const DrawContext = createContext<Draw>(drawFront);
