// Packs rectangles into equal sheets with the packers installed beside this file.
// Standard input, one JSON object: { "sheet": [width, height], "seconds": S, "items": [[width, height, count, mayTurn], ...] }.
// Standard output: [{ "name", "seconds", "sheets": [[[item, x, y, width, height], ...], ...] }, ...], one for each packer: its
// fewest sheets over all of its own settings, or over those that it could begin within the seconds given.
// Its package names a file that Node takes for a module of another kind, so the right one is named here.
import { MaxRectsPacker, PACKING_LOGIC, Rectangle } from 'maxrects-packer/dist/maxrects-packer.mjs';
import { BestAreaFit, BestLongSideFit, BestShortSideFit, BottomLeft, pack2D } from 'binpackingjs/2d';

const packers = [
  {
    name: 'maxrects-packer',
    settings: [PACKING_LOGIC.MAX_AREA, PACKING_LOGIC.MAX_EDGE, PACKING_LOGIC.FILL_WIDTH],
    pack: withMaxRects,
  },
  {
    name: 'binpackingjs',
    settings: [BestShortSideFit, BestAreaFit, BestLongSideFit, BottomLeft],
    pack: withBinPacking,
  },
];

function withMaxRects(job, logic) {
  // Plain rectangles of the sheet's own size: none of the conveniences for textures.
  const options = { smart: false, pot: false, square: false, tag: false, border: 0, allowRotation: true, logic };
  const packer = new MaxRectsPacker(...job.sheet, 0, options);
  packer.addArray(pieces(job).map(({ item, width, height, mayTurn }) => {
    const rectangle = new Rectangle(width, height, 0, 0, false, mayTurn);
    rectangle.data = { item };
    return rectangle;
  }));
  return packer.bins.map(bin => bin.rects.map(r => [r.data.item, r.x, r.y, r.width, r.height]));
}

function withBinPacking(job, Heuristic) {
  const boxes = pieces(job).map(({ item, width, height, mayTurn }) => ({ item, width, height, constrainRotation: !mayTurn }));
  // This packer wants to know its sheets beforehand: one for each piece is always enough.
  const bins = boxes.map(() => ({ width: job.sheet[0], height: job.sheet[1] }));
  const { packedBins } = pack2D({ bins, boxes, heuristic: new Heuristic() });
  return packedBins.map(bin => bin.boxes.map(b => [b.sourceBox.item, b.x, b.y, b.width, b.height])).filter(bin => bin.length > 0);
}

function pieces({ items }) {
  return items.flatMap(([width, height, count, mayTurn], item) =>
    Array.from({ length: count }, () => ({ item, width, height, mayTurn })));
}

function best(job, { name, settings, pack }) {
  const begun = performance.now();
  const spent = () => (performance.now() - begun) / 1000;
  let sheets = null;
  for (const setting of settings) {
    if (sheets && spent() > job.seconds) break;
    const found = pack(job, setting);
    if (!sheets || found.length < sheets.length) sheets = found;
  }
  return { name, seconds: spent(), sheets };
}

let text = '';
for await (const chunk of process.stdin) text += chunk;
const job = JSON.parse(text);
process.stdout.write(JSON.stringify(packers.map(packer => best(job, packer))));
