/** Words for codes that the engine speaks. A code that is not listed is shown with its hyphens taken out. */

export const plainCode = (code: string): string => code.replaceAll('-', ' ');
const wordFrom =
  (words: Readonly<Record<string, string>>) =>
  (code: string): string =>
    Object.hasOwn(words, code) ? words[code]! : plainCode(code);

export const areaWord = wordFrom({ home: 'at home', allotment: 'at the allotment' });

export const riskWord = wordFrom({
  'late-blight': 'blight in warm wet spells: cut the tops when it comes',
  'carrot-fly-spring': 'carrot fly from late April: mesh to the ground',
  'carrot-fly-autumn': 'carrot fly from July: mesh, lift by November',
  'cabbage-white': 'caterpillars: mesh, look under the leaves',
  'cabbage-root-fly': 'cabbage root fly: mesh from planting',
  'root-fly-in-roots': 'root fly mines the roots: mesh from sowing',
  'flea-beetle': 'flea beetle in dry weather: mesh, keep moist',
  'slugs-young': 'slugs while small',
  'pigeon-peas': 'pigeons: net while young',
  'pigeon-winter-brassicas': 'pigeons from November: net',
  'leek-moth-summer': 'leek moth: mesh in summer',
  'leek-moth-autumn': 'leek moth: mesh from August',
  'allium-leaf-miner-spring': 'leaf miner in spring: mesh',
  'allium-leaf-miner-autumn': 'leaf miner in autumn: mesh',
  'mice-peas-beans': 'mice take the seed: raise indoors or trap',
  'grey-mould-winter': 'grey mould: air on mild days, take off dead leaves',
  'black-bean-aphid': 'blackfly: pinch out the tops',
  'blossom-cold-wet': 'fruit sets badly in a cold wet spell',
  'mice-sweetcorn-squash': 'mice take seed and seedlings: raise indoors or trap',
  'badger-sweetcorn': 'badgers flatten it when it is ripe: fence',
  'celery-leaf-miner-and-spot': 'leaf miner and leaf spot: mesh, take off marked leaves',
  'red-spider-tunnel': 'red spider in a hot dry tunnel: damp down',
  'slugs-potato-tubers': 'slugs in the tubers: lift in good time',
  frost: 'frost: fleece at hand',
  bolting: 'some will run to seed: eat those first',
  'pots-check': 'checks in its pot if it waits: feed, do not let it dry',
  leggy: 'drawn up by warmth without light: lightest place, cooler, turn daily',
  drought: 'dry ground: water in the first weeks',
  emergence: 'comes up badly: sow a few spare',
  'old-seed': 'old seed: sown thicker, as counted',
  'hot-seedbed': 'seed sulks in the heat: shade the tray',
});

export const kitWord = wordFrom({
  mesh: 'mesh',
  net: 'net',
  fleece: 'fleece',
  cloche: 'cloches',
  canes: 'canes',
});

export const storeWord = wordFrom({
  ground: 'in the ground',
  dry: 'hanging, dry',
  'cool-damp': 'cool and damp',
  'frost-free': 'frost-free shed',
  sand: 'in sand',
  fridge: 'fridge',
  freezer: 'freezer',
  jar: 'jars',
});

export const dayReasonWord = wordFrom({
  'never-emerges': 'does not come up in most years',
  'not-ready-before-cleared': 'not ready before the ground is wanted',
  'not-ready-in-time': 'not ready within the time looked at',
  'killed-by-frost': 'killed by frost in most years',
  'ran-to-seed': 'runs to seed in most years',
  'plant-gone': 'the plant is gone by then',
  'still-establishing': 'left alone until it is strong enough',
  'no-frost-in-most-years': 'none in most years',
});

/** The same where it comes in more years than not. */
export const seldomReasonWord = wordFrom({
  'never-emerges': 'it does not come up',
  'not-ready-before-cleared': 'it is not ready before the ground is wanted',
  'not-ready-in-time': 'it is not ready in time',
  'killed-by-frost': 'frost takes it',
  'ran-to-seed': 'it runs to seed first',
  'plant-gone': 'the plant is gone by then',
  'still-establishing': 'it is left alone until it is strong enough',
  'not at all': 'not at all',
});

export const habitWord = wordFrom({
  once: 'lift or cut once',
  cuts: 'cut, it grows again',
  picks: 'pick over',
  tips: 'tips',
  thinnings: 'thinnings',
  stands: 'stands until wanted',
});

export const startWord = (startsAs: string, count: number): string => {
  const one = { seed: 'seed', set: 'set', clove: 'clove', tuber: 'tuber', crown: 'crown' }[startsAs];
  const name = one ?? 'piece';
  return count === 1 ? name : `${name}s`;
};

export const stageWord = wordFrom({
  mat: 'heated mat',
  sill: 'sill',
  bench: 'bench',
  frame: 'frame',
  pots: 'larger pots',
  bed: 'bed',
  tub: 'tub',
  tray: 'tray',
});

export const growsInWord = wordFrom({
  open: 'uncovered ground',
  cover: 'a tunnel or glasshouse',
  tub: 'a tub',
  frame: 'a cold frame',
  sill: 'a sill',
});
