import { describe, expect, test } from 'vitest';
import { GLOSSARY } from '../app/glossary/glossary';
import { SKETCHES, sketchOf } from '../app/glossary/sketches/sketches';

/** On a phone 390 px wide a sketch is shown this wide, px: the column without its margins. */
const SHOWN = 358;

/** Texts of a sketch as they lie on the sheet, an average letter 0.6 of the size wide. */
function textsOf(svg: string) {
  const [, wide = '0', high = '0'] = /viewBox="0 \S+ (\S+) (\S+)"/.exec(svg) ?? [];
  const texts = [
    ...svg.matchAll(/<text x="(\S+)" y="(\S+)" font-size="(\S+)" text-anchor="(\w+)"[^>]*>([^<]+)</g),
  ];
  return {
    wide: Number(wide),
    high: Number(high),
    texts: texts.map(([, x, y, size, anchor, text = '']) => {
      const length = text.length * 0.6 * Number(size);
      const shift = anchor === 'start' ? 0 : anchor === 'middle' ? length / 2 : length;
      return {
        text,
        left: Number(x) - shift,
        right: Number(x) - shift + length,
        foot: Number(y),
        size: Number(size),
      };
    }),
  };
}

const sketches = Object.keys(SKETCHES).map((id) => ({ id, ...textsOf(sketchOf(id) ?? '') }));

describe('the sketches of words', () => {
  test('every word has a picture: a ringed wall or a sketch, not both', () => {
    const pictured = GLOSSARY.map(({ id, picture }) => [id, (picture ? 1 : 0) + (id in SKETCHES ? 1 : 0)]);
    expect(pictured.filter(([, pictures]) => pictures !== 1)).toEqual([]);
    expect(Object.keys(SKETCHES).filter((id) => !GLOSSARY.some((entry) => entry.id === id))).toEqual([]);
  });

  test('texts are at least 12 px high on a phone', () => {
    const least = sketches.map(({ id, wide, texts }) => [
      id,
      Math.min(...texts.map(({ size }) => (size * SHOWN) / wide)),
    ]);
    expect(least.filter(([, px]) => Number(px) < 12)).toEqual([]);
  });

  test('every text stands whole on its sheet', () => {
    const out = sketches.flatMap(({ id, wide, high, texts }) =>
      texts
        .filter(({ left, right, foot, size }) => left < 0 || right > wide || foot > 0 || foot - size < -high)
        .map(({ text }) => `${id}: ${text}`),
    );
    expect(out).toEqual([]);
  });

  test('no text lies on another', () => {
    const touching = sketches.flatMap(({ id, texts }) =>
      texts.flatMap((one, index) =>
        texts
          .slice(index + 1)
          .filter(
            (other) =>
              one.left < other.right && other.left < one.right && Math.abs(one.foot - other.foot) < one.size,
          )
          .map((other) => `${id}: ${one.text} on ${other.text}`),
      ),
    );
    expect(touching).toEqual([]);
  });
});
