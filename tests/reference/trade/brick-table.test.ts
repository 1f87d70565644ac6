import { describe, expect, test } from 'vitest';
import { openingWidth, pierLength, returnLength } from '../../../lib/trade/bond';

// Source: "Brickwork dimensions", Technical Information Sheet 9, Table 1: horizontal brickwork dimensions for 215 mm bricks at 10 mm
// joints (yumpu.com, document 35562875), read. The rows are those the copy shows in full.
// Columns: bricks, opening (co-ordinating size + joint), return (co-ordinating size), pier (co-ordinating size − joint), mm.
const TABLE = [
  [0.5, 122.5, 112.5, 102.5],
  [1, 235, 225, 215],
  [1.5, 347.5, 337.5, 327.5],
  [2, 460, 450, 440],
  [2.5, 572.5, 562.5, 552.5],
  [3, 685, 675, 665],
  [3.5, 797.5, 787.5, 777.5],
  [4, 910, 900, 890],
  [4.5, 1022.5, 1012.5, 1002.5],
  [5, 1135, 1125, 1115],
  [5.5, 1247.5, 1237.5, 1227.5],
  [6, 1360, 1350, 1340],
  [34, 7660, 7650, 7640],
  [34.5, 7772.5, 7762.5, 7752.5],
  [35, 7885, 7875, 7865],
  [35.5, 7997.5, 7987.5, 7977.5],
  [36, 8110, 8100, 8090],
  [36.5, 8222.5, 8212.5, 8202.5],
  [37, 8335, 8325, 8315],
  [37.5, 8447.5, 8437.5, 8427.5],
  [38, 8560, 8550, 8540],
  [38.5, 8672.5, 8662.5, 8652.5],
  [39, 8785, 8775, 8765],
  [67.5, 15197.5, 15187.5, 15177.5],
  [68, 15310, 15300, 15290],
  [68.5, 15422.5, 15412.5, 15402.5],
  [69, 15535, 15525, 15515],
  [69.5, 15647.5, 15637.5, 15627.5],
  [70, 15760, 15750, 15740],
  [70.5, 15872.5, 15862.5, 15852.5],
  [71, 15985, 15975, 15965],
  [71.5, 16097.5, 16087.5, 16077.5],
  [72, 16210, 16200, 16190],
  [72.5, 16322.5, 16312.5, 16302.5],
] as const;

// Halves of a brick and of a millimetre are exact in binary: no tolerance.
describe('UK brickwork dimension table', () => {
  test.each(TABLE)('%d bricks: opening %d mm', (bricks, opening) => {
    expect(openingWidth(bricks, 215, 10)).toBe(opening);
  });

  test.each(TABLE.map(([bricks, , wall]) => [bricks, wall]))('%d bricks: return %d mm', (bricks, wall) => {
    expect(returnLength(bricks, 215, 10)).toBe(wall);
  });

  test.each(TABLE.map(([bricks, , , pier]) => [bricks, pier]))('%d bricks: pier %d mm', (bricks, pier) => {
    expect(pierLength(bricks, 215, 10)).toBe(pier);
  });
});
