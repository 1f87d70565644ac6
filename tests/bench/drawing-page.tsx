import { useMemo, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { WallDrawing } from '../../components/wall/wall-drawing';
import { drawingOf } from '../../lib/views/draw-view';
import { svgOf } from '../../lib/views/print-svg';
import type { Unit, Wall } from '../../lib/wall/model';
import { surveyedWall } from '../../lib/wall/surveyed';
import { handWall } from '../lib/views/hand-wall';

/** What is measured in the browser, ms. */
export interface Timing {
  readonly first: number;
  readonly worstClick: number;
  readonly elements: number;
}

const CLICKS = 50;
const FRAMES = 100;
/** Each frame of a zoom comes nearer by so much, as the bare drawing does. */
const NEARER = 1 / 0.98;
/** What has been painted is on the screen by then. */
const SHOWN_MS = 200;
const LENGTH = 210;
const GAUGE = 70;

/** A wall of whole units, as many courses as it takes. */
function wallOf(units: number, across: number): Wall {
  const courses = units / across;
  const laid = Array.from({ length: units }, (_, index): Unit => {
    const course = Math.floor(index / across) + 1;
    const position = (index % across) + 1;
    return {
      ...FIRST,
      id: `A${course}.${position}`,
      course,
      position,
      x: (position - 1) * LENGTH + ((course % 2) * LENGTH) / 2,
      y: 10 + (course - 1) * GAUGE,
      shade: (course * 3 + position) % 8,
    };
  });
  const [panel] = handWall().panels;
  const length = across * LENGTH + LENGTH / 2;
  return handWall({
    units: laid,
    ties: [],
    flashings: [],
    panels: panel ? [{ ...panel, courses, length, studs: [] }] : [],
  });
}

const [FIRST] = handWall().units as [Unit];

function Site({ wall }: { readonly wall: Wall }) {
  const [selected, select] = useState<string | null>(null);
  const surveyed = useMemo(() => surveyedWall(wall), [wall]);
  return (
    <WallDrawing
      surveyed={surveyed}
      view={{ kind: 'front' }}
      marks={[]}
      selected={selected}
      layer="units"
      system="mm"
      label="Wall"
      onPick={select}
    />
  );
}

/** The same wall by bare calls: the drawing as text, a click found by arithmetic, a ring moved, a box changed. No framework, no grid for the keyboard. */
function bare(wall: Wall, room: HTMLElement): void {
  const surveyed = surveyedWall(wall);
  room.innerHTML = svgOf(surveyed, { kind: 'front' });
  const svg = room.querySelector('svg') as SVGSVGElement;
  svg.setAttribute('style', 'display:block;width:100%;height:auto');
  const { spots } = drawingOf(surveyed, { kind: 'front' }, 'mm');
  const ring = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  ring.setAttribute('style', 'fill:none;stroke:#fff;stroke-width:3px;vector-effect:non-scaling-stroke');
  svg.append(ring);
  svg.addEventListener('click', ({ clientX, clientY }) => {
    const { left, top, width } = svg.getBoundingClientRect();
    const scale = svg.viewBox.baseVal.width / width;
    const x = svg.viewBox.baseVal.x + (clientX - left) * scale;
    const y = 0 - (svg.viewBox.baseVal.y + (clientY - top) * scale);
    const hit = spots.find(
      (spot) =>
        /^A\d+\.\d+$/.test(spot.part) &&
        x >= spot.x &&
        x <= spot.x + spot.width &&
        y >= spot.y &&
        y <= spot.y + spot.height,
    );
    if (hit === undefined) return;
    ring.setAttribute('x', `${hit.x}`);
    ring.setAttribute('y', `${0 - hit.y - hit.height}`);
    ring.setAttribute('width', `${hit.width}`);
    ring.setAttribute('height', `${hit.height}`);
  });
  const nearer = document.createElement('button');
  nearer.setAttribute('aria-label', 'Nearer');
  nearer.addEventListener('click', () => {
    const { x, y, width, height } = svg.viewBox.baseVal;
    svg.setAttribute('viewBox', `${x + width * 0.01} ${y + height * 0.01} ${width * 0.98} ${height * 0.98}`);
  });
  room.append(nearer);
}

/** Once the next frame has been painted. */
function painted(): Promise<void> {
  return new Promise((resolve) => {
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => resolve();
      channel.port2.postMessage(null);
    });
  });
}

/** Draws a wall and clicks on fifty units. */
export async function measure(way: 'site' | 'bare', units: number, across: number): Promise<Timing> {
  const wall = wallOf(units, across);
  const room = document.createElement('div');
  document.body.replaceChildren(room);
  await painted();
  const start = performance.now();
  if (way === 'bare') bare(wall, room);
  else createRoot(room).render(<Site wall={wall} />);
  while (room.querySelector('svg') === null) await painted();
  await painted();
  const first = performance.now() - start;
  await painted();

  const svg = room.querySelector('svg') as SVGSVGElement;
  const box = svg.getBoundingClientRect();
  const clicks: number[] = [];
  for (let click = 0; click < CLICKS; click++) {
    const clientX = box.left + box.width * (0.2 + 0.6 * ((click * 7) % 11) * 0.09);
    const clientY = box.top + box.height * (0.15 + 0.6 * ((click * 5) % 13) * 0.075);
    const from = performance.now();
    svg.dispatchEvent(new MouseEvent('click', { bubbles: true, clientX, clientY }));
    await painted();
    clicks.push(performance.now() - from);
  }
  return {
    first,
    worstClick: Math.max(...clicks),
    elements: room.querySelectorAll('*').length,
  };
}

/** Zooms the wall for a hundred frames, and waits until it is drawn at rest and shown. Marks in the trace say when it was at what. */
export async function zoom(way: 'site' | 'bare'): Promise<void> {
  const svg = document.querySelector('svg') as SVGSVGElement;
  const { left, top, width, height } = svg.getBoundingClientRect();
  const turned = {
    bubbles: true,
    cancelable: true,
    ctrlKey: true,
    deltaY: 300 * (1 - NEARER),
    clientX: left + width / 2,
    clientY: top + height / 2,
  };
  performance.mark('zoom-start');
  for (let frame = 0; frame < FRAMES; frame++) {
    if (frame === FRAMES - 1) performance.mark('zoom-last');
    if (way === 'bare') document.querySelector<HTMLButtonElement>('button[aria-label="Nearer"]')?.click();
    else svg.dispatchEvent(new WheelEvent('wheel', turned));
    await painted();
  }
  performance.mark('zoom-end');
  while (getComputedStyle(svg).transform !== 'none') await painted();
  await new Promise((resolve) => setTimeout(resolve, SHOWN_MS));
}
