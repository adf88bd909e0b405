/** Random invented gardens for property tests, small enough to be planned in a second. */
import fc from 'fast-check';
import { type Garden, parseGarden } from '../packages/garden/src/index.ts';
import { kindIds } from '../packages/growing/src/index.ts';

const climates = [
  { climate: 'camborne', latitude: 50.2 },
  { climate: 'muenchen', latitude: 48.1 },
  { climate: 'boston', latitude: 42.4 },
  { climate: 'hobart', latitude: -42.8 },
];

const roleIds = ['cooked-greens', 'salad-leaves', 'onions', 'leeks', 'sweet-roots', 'beans-peas', 'cabbages'];
const boughtWholly = Object.fromEntries(
  ['potatoes', 'garlic', 'broccoli', 'stalks', 'herbs', 'summer-fruits'].map((role) => [role, 'all']),
);

/** Kinds that feed those roles; few at a time keep a plan quick. */
const pool = [
  'bean-climbing',
  'beetroot',
  'cabbage-spring',
  'cabbage-winter',
  'carrot-early',
  'carrot-maincrop',
  'chard',
  'kale',
  'lambs-lettuce',
  'leek',
  'lettuce-leaf',
  'onion-spring-set',
  'pea-round',
  'pea-shoots',
  'rocket-mustard',
  'spinach-overwintering',
  'swede',
  'turnip-early',
];

export interface RandomGarden {
  readonly garden: Garden;
  readonly fromDay: number;
  /** Kinds that may be sown. */
  readonly offered: readonly string[];
  readonly bannedPlace: string | null;
  readonly atMost: { readonly kind: string; readonly plants: number } | null;
  readonly hasKit: boolean;
}

const day = fc
  .record({ month: fc.integer({ min: 1, max: 12 }), day: fc.integer({ min: 1, max: 28 }) })
  .map((d) => `2026-${String(d.month).padStart(2, '0')}-${String(d.day).padStart(2, '0')}`);

const drawn = fc.record({
  site: fc.constantFrom(...climates),
  day,
  offered: fc.uniqueArray(fc.constantFrom(...pool), { minLength: 5, maxLength: 9 }),
  people: fc.integer({ min: 1, max: 4 }),
  servings: fc.array(fc.integer({ min: 0, max: 4 }), {
    minLength: roleIds.length,
    maxLength: roleIds.length,
  }),
  beds: fc.integer({ min: 1, max: 4 }),
  lengthM: fc.integer({ min: 2, max: 12 }),
  clubroot: fc.boolean(),
  tunnelM: fc.option(fc.integer({ min: 2, max: 6 }), { nil: null }),
  tubs: fc.integer({ min: 0, max: 3 }),
  trays: fc.option(fc.integer({ min: 1, max: 4 }), { nil: null }),
  kit: fc.boolean(),
  hours: fc.option(fc.integer({ min: 1, max: 6 }), { nil: null }),
  most: fc.option(fc.integer({ min: 1, max: 40 }), { nil: null }),
  standing: fc.boolean(),
});

export type DrawnGarden = typeof drawn extends fc.Arbitrary<infer T> ? T : never;

export function gardenOf(d: DrawnGarden, moreBeds = 0): RandomGarden {
  const appetite = Object.fromEntries(roleIds.map((role, i) => [role, d.servings[i]! || 0.5]));
  const most = d.most === null ? null : { kind: d.offered[0]!, plants: d.most };
  const text = JSON.stringify({
    schemaVersion: 1,
    invented: true,
    planFrom: d.day,
    hoursPerWeek: d.hours,
    household: {
      name: 'drawn at random',
      people: Array.from({ length: d.people }, (_, i) => ({ name: `person ${i + 1}` })),
      appetite,
      boughtOnPurpose: boughtWholly,
      dislikes: kindIds.filter((kind) => !d.offered.includes(kind)),
    },
    site: { name: 'drawn at random', longitude: 0, elevationM: 20, ...d.site },
    covers: [
      { id: 'tunnel', material: 'polytunnel' },
      { id: 'window', material: 'windowsill', faces: 'south' },
    ],
    places: [
      { id: 'bed', count: d.beds + moreBeds, lengthM: d.lengthM, widthM: 1.2 },
      {
        id: 'sick',
        count: 1,
        lengthM: d.lengthM,
        widthM: 1.2,
        wet: true,
        onRecord: d.clubroot ? ['clubroot'] : [],
      },
      ...(d.tunnelM === null ? [] : [{ id: 'inside', cover: 'tunnel', lengthM: d.tunnelM, widthM: 1.1 }]),
      ...(d.tubs === 0 ? [] : [{ id: 'tub', use: 'tub', count: d.tubs, litres: 40 }]),
      ...(d.trays === null ? [] : [{ id: 'sill', use: 'bench', cover: 'window', trays: d.trays }]),
    ],
    kit: d.kit ? { fleeceM: 4, netM: 4, meshM: 2 } : {},
    stores: [{ store: 'cool-damp' }, { store: 'dry' }],
    standing: d.standing
      ? [{ kind: 'kale', place: 'bed', number: 1, count: 4, groundM2: 1.2, sown: '2025-12-20' }]
      : [],
    wishes: most === null ? [] : [{ kind: most.kind, atMost: most.plants }],
  });
  const { garden, issues } = parseGarden(text, { today: 0 });
  if (garden === null || typeof garden.planFrom !== 'number')
    throw new Error(`a random garden is broken: ${issues.map((issue) => issue.code).join(', ')}`);
  return {
    garden,
    fromDay: garden.planFrom,
    offered: d.offered,
    bannedPlace: d.clubroot ? 'sick' : null,
    atMost: most,
    hasKit: d.kit,
  };
}

export const anyGarden: fc.Arbitrary<DrawnGarden> = drawn;
