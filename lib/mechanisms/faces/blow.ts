import { crackWhere, shift } from '../draft';
import { between, type Mechanism } from '../mechanism';

/** A blow at one place pushes units in and wedges their neighbours apart: a star of cracks, a crushed spot, a scuff. */
export const BLOW: Mechanism = {
  name: 'blow',
  what: 'something hard has hit the wall: a crushed spot, units driven in, cracks that run out from them',
  showsAfter: 0,
  lacks: ({ wall }, main) =>
    wall.masonry === 'anchored' &&
    main.placed.some(({ left, right, above, below }) => left && right && above.length > 1 && below.length > 1)
      ? null
      : 'a wall that is laid in beds of mortar, with a unit that has others all round',
  act: ({ main, draft, chance }) => {
    const inner = main.placed.filter(
      ({ left, right, above, below, unit }) =>
        left?.left && right?.right && above.length > 1 && below.length > 1 && unit.height < unit.length,
    );
    const low = inner.filter(({ unit }) => unit.y > 250 && unit.y < 700);
    const hit = chance.pick(low.length > 0 ? low : inner.length > 0 ? inner : main.placed);
    const { unit } = hit;
    const centre = { x: unit.x + unit.length / 2, y: unit.y + unit.height / 2 };
    const reach = between(chance, 230, 330);
    const driven = between(chance, 8, 22);
    const wedge = between(chance, 0.5, 1.4);
    for (const { unit: each } of main.placed) {
      const dx = each.x + each.length / 2 - centre.x;
      const dy = each.y + each.height / 2 - centre.y;
      const away = Math.sqrt(dx * dx + dy * dy);
      if (away >= reach) continue;
      const near = 1 - away / reach;
      const out = away === 0 ? 0 : wedge * near;
      shift(draft, each.id, {
        w: -driven * near * near,
        u: away === 0 ? 0 : (out * dx) / away,
        v: away === 0 ? 0 : (out * dy) / away,
      });
    }
    // The blow cracks what lies round the units that it struck; those further off stay as they are.
    const first = new Set<string>([
      unit.id,
      ...[hit.left, hit.right, ...hit.above, ...hit.below].flatMap((each) => (each ? [each.unit.id] : [])),
    ]);
    crackWhere(
      draft,
      ({ kind, unit: id, other }) =>
        kind !== 'tie' && (id === unit.id || other === unit.id || (first.has(id) && first.has(other))),
    );
    const box = { x: centre.x - 45, y: centre.y - unit.height * 0.4, width: 90, height: unit.height * 0.8 };
    draft.damage.push({ unit: unit.id, kind: 'crushed', depth: 15, box });
    draft.zones.push({
      kind: 'scuff',
      panel: unit.panel,
      box: { x: centre.x - 130, y: centre.y - 70, width: 260, height: 140 },
    });
  },
};
